<#-- Sheets and lengths with their cuts. Gets: say; stocks (title, size, bound, sheets: first, heading,
     bar, drawing, breaks, cuts in columns: number, of, direction, fence, gives). -->
<#import "/frame/macros.ftl" as frame>
<#macro cuts rows><table class="list">
<thead><tr><th class="figure">${say('column.cut')}</th><th class="gap">${say('column.cut-from')}</th><th class="gap">${say('column.direction')}</th><th class="figure">${say('column.fence')}</th><th class="gap last">${say('column.gives')}</th></tr></thead>
<tbody><#list rows as cut><tr><td class="figure">${cut.number}</td><td class="gap">${cut.of}</td><td class="gap">${cut.direction}</td><td class="figure">${cut.fence}</td><td class="gap last">${cut.gives}</td></tr></#list></tbody>
</table></#macro>
<#macro sheets stocks><#list stocks as stock>
<#list stock.sheets as sheet>
<div class="<#if sheet.bar>bar<#else>layout</#if><#if sheet.breaks> section</#if>">
<#if sheet.first>
<h2<#if sheet.breaks> class="top"</#if>>${stock.title}</h2>
<p>${stock.size}. ${stock.bound}</p>
</#if>
<#if sheet.heading?has_content><h3>${sheet.heading}</h3></#if>
<div class="picture"><@frame.drawing sheet.drawing/></div>
<#if sheet.cuts?has_content>
<table class="columns"><tr>
<#list sheet.cuts as column><td class="column half<#if column?index == 1> end</#if>">
<@cuts column/></td>
</#list>
<#if sheet.cuts?size == 1><td class="column half end"></td></#if>
</tr></table>
</#if>
</div>
</#list>
</#list></#macro>
