<#-- How the wood moves and bends. Gets: wood (title, a key; lead; moving, pages of rows: mark, part, wood, width, swells, shrinks,
     room; loads, pages of rows: mark, part, load, span, bends, inTime, limit; each page: breaks, first). -->
<#import "/frame/macros.ftl" as frame>
<#macro title page><h1 id="wood"<#if !page.breaks> class="follows"</#if>>${say(wood.title())}</h1></#macro>
<#list wood.moving as page>
<div<#if page.breaks> class="section"</#if>>
<#if page.breaks || page.first><@frame.head say(wood.title())/></#if>
<#if page.first><@title page/>
<p>${wood.lead}</p></#if>
<table class="list tools">
<colgroup><col style="width:9%"/><col style="width:19%"/><col style="width:14%"/><col style="width:11%"/><col style="width:10%"/><col style="width:10%"/><col style="width:27%"/></colgroup>
<thead><tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><th>${say('column.wood')}</th><th class="figure">${say('column.width')}</th><th class="figure">${say('column.swells')}</th><th class="figure">${say('column.shrinks')}</th><th class="gap last">${say('column.room')}</th></tr></thead>
<tbody>
<#list page.rows as row>
<tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td>${row.part}</td><td>${row.wood}</td><td class="figure">${row.width}</td><td class="figure">${row.swells}</td><td class="figure">${row.shrinks}</td><td class="gap last">${row.room}</td></tr>
</#list>
</tbody></table>
</div>
</#list>
<#list wood.loads as page>
<div<#if page.breaks> class="section"</#if>>
<#if page.breaks><@frame.head say(wood.title())/></#if>
<#if page.first>
<#if !wood.moving?has_content><@title page/></#if>
<h2<#if page.breaks> class="top"</#if>>${say('wood.loads')}</h2>
<p>${say('wood.loads.lead')}</p></#if>
<table class="list tools">
<colgroup><col style="width:9%"/><col style="width:26%"/><col style="width:13%"/><col style="width:13%"/><col style="width:13%"/><col style="width:13%"/><col style="width:13%"/></colgroup>
<thead><tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><th class="figure">${say('column.load')}</th><th class="figure">${say('column.span')}</th><th class="figure">${say('column.bends')}</th><th class="figure">${say('column.limit')}</th><th class="figure last">${say('column.in-time')}</th></tr></thead>
<tbody>
<#list page.rows as row>
<tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td>${row.part}</td><td class="figure">${row.load}</td><td class="figure">${row.span}</td><td class="figure">${row.bends}</td><td class="figure">${row.limit}</td><td class="figure last">${row.inTime}</td></tr>
</#list>
</tbody></table>
</div>
</#list>
