<#-- The wood that was used, with its story and its moisture. Gets: recorded.boards (stock, story, planned, measured,
     difference, where); recorded.moisture, the target in per cent; recordBreaks.boards, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<div class="record<#if recordBreaks.boards> section</#if>">
<@frame.opening "boards" say('record.boards') recordBreaks.boards/>
<p>${say('record.boards.lead', recorded.moisture)}</p>
<table class="list fill">
<thead><tr><th>${say('record.wood')}</th><th>${say('record.story')}</th><th class="figure">${say('record.target')}</th><th class="figure">${say('record.measured')}</th><th class="figure">${say('record.difference')}</th><th class="last gap">${say('record.where')}</th></tr></thead>
<tbody>
<#list recorded.boards as each><tr><td class="stock">${each.stock}</td><td class="words">${each.story}</td><td class="figure">${each.planned}</td><td class="figure">${each.measured}</td><td class="figure">${each.difference}</td><td class="last gap where">${each.where}</td></tr>
</#list>
</tbody></table>
</div>
