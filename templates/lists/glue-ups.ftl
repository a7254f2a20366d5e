<#-- What is glued up before anything is cut in it. Gets: glueUps.rows (mark, part, count, of, board, blank, laid);
     units; breaks.glueUps, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<#if glueUps.rows?has_content>
<div<#if breaks.glueUps> class="section"</#if>>
<#if breaks.glueUps><@frame.head say('glue-ups.title')/></#if>
<h1 id="glue-ups"<#if !breaks.glueUps> class="follows"</#if>>${say('glue-ups.title')}</h1>
<p>${say('glue-ups.lead', units)}</p>
<table class="list<#if glueUps.rows?size gt 30> long</#if>">
<thead><tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><th class="figure">${say('column.count')}</th><th class="gap">${say('column.glued-from')}</th><th class="figure">${say('column.each-board')}</th><th class="figure">${say('column.glued-blank')}</th><th class="gap last">${say('column.rings')}</th></tr></thead>
<tbody>
<#list glueUps.rows as row>
<tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td class="name">${row.part}</td><td class="figure">${row.count}</td><td class="gap">${row.of}</td><td class="figure kept"><@frame.figure row.board/></td><td class="figure kept"><@frame.figure row.blank/></td><td class="gap last">${row.laid}</td></tr>
</#list>
</tbody></table>
</div>
</#if>
