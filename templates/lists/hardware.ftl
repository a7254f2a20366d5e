<#-- The hardware schedule. Gets: hardware.rows (mark, item, count, parts, steps);
     breaks.hardware, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<#if hardware.rows?has_content>
<div class="hardware<#if breaks.hardware> section</#if>">
<@frame.head say('hardware.title')/>
<h1 id="hardware"<#if !breaks.hardware> class="follows"</#if>>${say('hardware.title')}</h1>
<table class="list<#if hardware.rows?size gt 30> long</#if>">
<thead><tr><th>${say('column.mark')}</th><th>${say('column.item')}</th><th class="figure">${say('column.count')}</th><th class="gap">${say('column.in-parts')}</th><th class="last">${say('column.in-steps')}</th></tr></thead>
<tbody>
<#list hardware.rows as row>
<tr><td class="mark" id="hardware-${row.mark}">${row.mark}</td><td>${row.item}</td><td class="figure">${row.count}</td><td class="gap">${row.parts}</td><td class="last">${row.steps}</td></tr>
</#list>
</tbody></table>
</div>
</#if>
