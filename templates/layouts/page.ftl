<#-- The layouts of the sheets. Gets: layouts.stocks (title, size, bound, sheets: number, of, drawing,
     breaks, cuts in columns: number, direction, fence). -->
<#import "/frame/macros.ftl" as frame>
<#macro cuts rows><table class="list">
<thead><tr><th class="figure">${say('column.cut')}</th><th class="gap">${say('column.direction')}</th><th class="figure last">${say('column.fence')}</th></tr></thead>
<tbody><#list rows as cut><tr><td class="figure">${cut.number}</td><td class="gap">${cut.direction}</td><td class="figure last">${cut.fence}</td></tr></#list></tbody>
</table></#macro>
<#if layouts.stocks?has_content>
<div class="section" id="layouts">
<@frame.head say('layouts.title')/>
<h1>${say('layouts.title')}</h1>
<p class="lead">${say('layouts.lead')}</p>
<#list layouts.stocks as stock>
<#list stock.sheets as sheet>
<div class="layout<#if sheet.breaks> section</#if>">
<#if sheet.number == 1>
<h2<#if sheet.breaks> class="top"</#if>>${stock.title}</h2>
<p>${stock.size}. ${stock.bound}</p>
</#if>
<#if sheet.of gt 1><h3>${say('layout.sheet', sheet.number, sheet.of)}</h3></#if>
<div class="picture"><@frame.drawing sheet.drawing/></div>
<#if sheet.cuts?has_content>
<table class="columns"><tr>
<#list sheet.cuts as column><td class="column<#if column?index == 2> end</#if>">
<@cuts column/></td>
</#list>
<#list sheet.cuts?size..<3 as missing><td class="column<#if missing == 2> end</#if>"></td></#list>
</tr></table>
</#if>
</div>
</#list>
</#list>
</div>
</#if>
