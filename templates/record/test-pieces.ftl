<#-- The offcuts on which the finish was tried. Gets: finish, none or one (planned);
     recorded.testPieces (wood, product, sanded, verdict, date); recordBreaks['test-pieces'], whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<div class="record<#if recordBreaks['test-pieces']> section</#if>">
<@frame.opening "test-pieces" say('record.test-pieces') recordBreaks['test-pieces']/>
<#list finish as f><p>${f.planned}</p></#list>
<table class="list fill">
<thead><tr><th>${say('record.wood')}</th><th>${say('finish.product')}</th><th>${say('record.sanded')}</th><th>${say('record.verdict')}</th><th class="last">${say('record.date')}</th></tr></thead>
<tbody>
<#list recorded.testPieces as each><tr><td class="stock">${each.wood}</td><td class="stock">${each.product}</td><td>${each.sanded}</td><td class="words">${each.verdict}</td><td class="last day">${each.date}</td></tr>
</#list>
</tbody></table>
</div>
