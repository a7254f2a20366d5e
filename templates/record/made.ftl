<#-- The sizes of each part planned beside made, and what went otherwise. Gets: madePages, pages of rows (mark, part; planned,
     made and difference: length, width, thickness; say); recorded.steps (step, title, say); recordBreaks.made and
     recordBreaks.steps, whether the sizes and the steps begin a page; units. -->
<#import "/frame/macros.ftl" as frame>
<#macro sizes of><td class="figure gap"><@frame.figure of.length/></td><td class="figure"><@frame.figure of.width/></td><td class="figure"><@frame.figure of.thickness/></td></#macro>
<#list madePages as rows>
<div class="record<#if !rows?is_first || recordBreaks.made> section</#if>">
<#if rows?is_first>
<@frame.opening "made" say('record.made') recordBreaks.made/>
<p>${say('record.made.lead', units)}</p>
<#else><@frame.head say('record.made')/></#if>
<table class="list fill">
<thead>
<tr><th class="none"></th><th class="none"></th><th class="group" colspan="3">${say('record.planned')}</th><th class="group" colspan="3">${say('record.really')}</th><th class="group" colspan="3">${say('record.difference')}</th></tr>
<tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><#list 1..3 as i><th class="figure gap">${say('column.length')}</th><th class="figure">${say('column.width')}</th><th class="figure<#if i == 3> last</#if>">${say('column.thickness')}</th></#list></tr>
</thead>
<tbody>
<#list rows as row>
<tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td class="part"><p>${row.part}</p><#if row.say?has_content><p class="quiet">${row.say}</p></#if></td><@sizes row.planned/><@sizes row.made/><@sizes row.difference/></tr>
</#list>
</tbody></table>
</div>
</#list>
<#if recorded.steps?has_content>
<div class="record<#if recordBreaks.steps> section</#if>">
<#if recordBreaks.steps><@frame.head say('record.made')/></#if>
<h2<#if recordBreaks.steps> class="top"</#if>>${say('record.steps')}</h2>
<table class="list fill">
<thead><tr><th>${say('record.step')}</th><th>${say('record.stage')}</th><th class="last">${say('record.otherwise')}</th></tr></thead>
<tbody>
<#list recorded.steps as each><tr><td class="day">${each.step}</td><td class="stock">${each.title}</td><td class="last">${each.say}</td></tr>
</#list>
</tbody></table>
</div>
</#if>
