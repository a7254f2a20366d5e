<#-- The cut list. Gets: breaks.cutList, pages of rows (mark, part, count, stock, finished and rough: length, width,
     thickness; grain, blankOf, note); units. A long name of a stock may take two lines. -->
<#import "/frame/macros.ftl" as frame>
<#list breaks.cutList as rows>
<div class="section">
<@frame.head say('cutlist.title')/>
<#if rows?is_first>
<h1 id="cut-list">${say('cutlist.title')}</h1>
<p class="lead">${say('cutlist.lead', units)}</p>
</#if>
<table class="list cut-list">
<thead>
<tr><th class="none"></th><th class="none"></th><th class="none"></th><th class="group" colspan="3">${say('cutlist.finished')}</th><th class="group" colspan="3">${say('cutlist.rough')}</th><th class="none"></th><th class="none"></th></tr>
<tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><th class="figure">${say('column.count')}</th>
<th class="figure gap">${say('column.length')}</th><th class="figure">${say('column.width')}</th><th class="figure">${say('column.thickness')}</th>
<th class="figure gap">${say('column.length')}</th><th class="figure">${say('column.width')}</th><th class="figure">${say('column.thickness')}</th>
<th class="gap">${say('column.stock')}</th><th class="last">${say('column.grain')}</th></tr>
</thead>
<tbody>
<#list rows as row>
<tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td class="name"><#if row.note?has_content><p>${row.part}</p><p class="quiet blank-note">${row.note}</p><#else>${row.part}</#if></td><td class="figure">${row.count}</td>
<td class="figure gap"><@frame.figure row.finished.length/></td><td class="figure"><@frame.figure row.finished.width/></td><td class="figure"><@frame.figure row.finished.thickness/></td>
<#if row.blankOf?has_content><td class="gap quiet blank-of" colspan="3">${say('cutlist.blank-of', row.blankOf)}</td>
<#else><td class="figure gap"><@frame.figure row.rough.length/></td><td class="figure"><@frame.figure row.rough.width/></td><td class="figure"><@frame.figure row.rough.thickness/></td></#if>
<td class="gap<#if row.stock?length lt 28 && !row.stock?contains("[")> kept</#if>">${row.stock}</td><td class="last kept">${row.grain}</td></tr>
</#list>
</tbody>
</table>
</div>
</#list>
