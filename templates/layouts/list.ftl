<#-- The layouts of plain lists. Gets: say; language; paper; cover (name); list (sentence, used, kerf,
     lengthsOnly, costs, stock: name, size, used, available, each, cost; parts: mark, name, length,
     width, count, grain); layouts.stocks, as sheets.ftl takes them. -->
<#import "/frame/macros.ftl" as frame>
<#import "/layouts/sheets.ftl" as layout>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${cover.name}</title>
<style type="text/css">
<#include "/style/style.ftl">
</style>
</head>
<body>
<#include "/frame/foot.ftl">
<div id="lists">
<@frame.head say('list.title')/>
<h1>${cover.name}</h1>
<p class="lead">${list.sentence} ${list.used}</p>
<h2>${say('list.stock')}</h2>
<table class="list">
<thead><tr><th>${say('column.stock')}</th><th class="figure">${say(list.lengthsOnly?then('column.length', 'column.sheet-size'))}</th><th class="figure">${say('column.used')}</th><th class="figure<#if !list.costs> last</#if>">${say('column.available')}</th><#if list.costs><th class="figure">${say('column.each')}</th><th class="figure last">${say('column.cost')}</th></#if></tr></thead>
<tbody><#list list.stock as row><tr><td class="name">${row.name}</td><td class="figure">${row.size}</td><td class="figure">${row.used}</td><td class="figure<#if !list.costs> last</#if>">${row.available}</td><#if list.costs><td class="figure">${row.each}</td><td class="figure last">${row.cost}</td></#if></tr></#list></tbody>
</table>
<h2>${say('list.parts')}</h2>
<table class="list<#if list.parts?size gt 30> long</#if>">
<thead><tr><th>${say('column.mark')}</th><th>${say('column.part')}</th><th class="figure">${say('column.count')}</th><th class="figure">${say('column.length')}</th><#if !list.lengthsOnly><th class="figure">${say('column.width')}</th><th class="gap last">${say('column.grain')}</th></#if></tr></thead>
<tbody><#list list.parts as row><tr><td class="mark">${row.mark}</td><td class="name">${row.name}</td><td class="figure">${row.count}</td><td class="figure">${row.length}</td><#if !list.lengthsOnly><td class="figure">${row.width}</td><td class="gap last">${row.grain}</td></#if></tr></#list></tbody>
</table>
</div>
<div class="section" id="layouts">
<@frame.head say('list.title')/>
<p>${list.kerf} <#if list.lengthsOnly>${say('list.lengths-lead')}<#else>${say('layouts.lead')}</#if></p>
<@layout.sheets layouts.stocks/>
</div>
</body>
</html>
