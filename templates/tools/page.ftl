<#-- The tools of the steps. Gets: tools.set, pages of rows for tools that are set to something (breaks, first;
     rows: tool, name, value, parts, steps: runs of steps), the rows of a tool in a row; tools.all, pages of rows of
     one or two tools (name, sizes in which it is wanted, steps). -->
<#import "/frame/macros.ftl" as frame>
<#macro title page><h1 id="tools"<#if !page.breaks> class="follows"</#if>>${say('tools.title')}</h1></#macro>
<#list tools.set as page>
<div<#if page.breaks> class="section"</#if>>
<#if page.breaks || page.first><@frame.head say('tools.title')/></#if>
<#if page.first><@title page/>
<p>${say('tools.lead')}</p></#if>
<table class="list tools">
<colgroup><col style="width:20%"/><col style="width:29%"/><col style="width:13%"/><col style="width:18%"/><col style="width:20%"/></colgroup>
<thead><tr><th>${say('column.tool')}</th><th>${say('column.setting')}</th><th class="figure">${say('column.value')}</th><th class="gap">${say('column.in-parts')}</th><th class="last">${say('column.in-steps')}</th></tr></thead>
<tbody>
<#-- A long name stands beside all rows of its tool, and makes none of them high. -->
<#assign before = "">
<#list page.rows as row>
<tr><#if row.tool != before><td rowspan="${page.rows?filter(each -> each.tool == row.tool)?size}"><b>${row.tool}</b></td></#if><td>${row.name}</td><td class="figure">${row.value}</td><td class="gap">${row.parts}</td><td class="last"><@frame.steps row.steps/></td></tr>
<#assign before = row.tool>
</#list>
</tbody></table>
</div>
</#list>
<#list tools.all as page>
<div<#if page.breaks> class="section"</#if>>
<#if page.breaks><@frame.head say('tools.title')/></#if>
<#if page.first><#if tools.set?has_content><h2<#if page.breaks> class="top"</#if>>${say('tools.all')}</h2><#else><@title page/></#if></#if>
<table class="list tools">
<colgroup><col style="width:27%"/><col style="width:23%"/><col style="width:27%"/><col style="width:23%"/></colgroup>
<thead><tr><th>${say('column.tool')}</th><th>${say('column.in-steps')}</th><th>${say('column.tool')}</th><th class="last">${say('column.in-steps')}</th></tr></thead>
<tbody>
<#list page.rows as pair>
<tr><#list pair as tool><td><#if tool.sizes?has_content>${say('tools.sized', tool.name, tool.sizes)}<#else>${tool.name}</#if></td><td<#if tool?index == 1> class="last"</#if>><@frame.steps tool.steps/></td></#list><#if pair?size == 1><td></td><td class="last"></td></#if></tr>
</#list>
</tbody></table>
</div>
</#list>
