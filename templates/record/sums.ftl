<#-- A table of figures planned beside done. Gets: sums (rows and total: title, planned, done, difference, say; any,
     whether any was recorded), and the words for its first and its third column. -->
<#macro table sums first done>
<table class="list fill">
<thead><tr><th>${first}</th><th class="figure">${say('record.planned')}</th><th class="figure">${done}</th><th class="figure">${say('record.difference')}</th><th class="last gap">${say('record.remarks')}</th></tr></thead>
<tbody>
<#list sums.rows as each><tr><td>${each.title}</td><td class="figure">${each.planned}</td><td class="figure sum">${each.done}</td><td class="figure sum">${each.difference}</td><td class="last gap words">${each.say}</td></tr>
</#list>
<tr class="total"><td>${sums.total.title}</td><td class="figure">${sums.total.planned}</td><td class="figure">${sums.total.done}</td><td class="figure">${sums.total.difference}</td><td class="last gap words">${sums.total.say}</td></tr>
</tbody></table>
</#macro>
