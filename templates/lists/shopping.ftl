<#-- What to buy. Gets: shopping.boards (stock, boughtAs, net, onHand, wastePercent, toBuy, cost), .sheets
     (stock, size, count, cost), .items (item, note, count, packSize, packs, cost), .supplies (rows: product, area, takes,
     soldIn, cans, cost; ranges: whether an amount is one), .total, .currency of all costs or empty; .below(prices): the keys of what is said below it; .besides.sentence: what the steps use up besides, or empty; breaks (boards, sheets,
     items, supplies), which of them begin a page; edition.prices, whether costs are printed. -->
<#import "/frame/macros.ftl" as frame>
<#assign cost = shopping.currency?has_content?then(say('column.cost.in', shopping.currency), say('column.cost'))>
<div<#if breaks.boards> class="section"</#if>>
<@frame.head say('shopping.title')/>
<h1 id="shopping"<#if !breaks.boards> class="follows"</#if>>${say('shopping.title')}</h1>
<#if shopping.boards?has_content>
<#assign hand = false><#list shopping.boards as board><#if board.onHand?has_content><#assign hand = true></#if></#list>
<h2>${say('shopping.boards')}</h2>
<table class="list">
<thead><tr><th>${say('column.stock')}</th><th class="figure">${say('column.bought-as')}</th><th class="figure">${say('column.net.' + unitWord)}</th><#if hand><th class="figure">${say('column.on-hand')}</th></#if><th class="figure">${say('column.waste')}</th><th class="figure">${say('column.to-buy.' + unitWord)}</th><#if edition.prices><th class="figure last">${cost}</th></#if></tr></thead>
<tbody>
<#list shopping.boards as board>
<tr><td>${board.stock}</td><td class="figure">${board.boughtAs}</td><td class="figure">${board.net}</td><#if hand><td class="figure">${board.onHand}</td></#if><td class="figure">${board.wastePercent} %</td><td class="figure">${board.toBuy}</td><#if edition.prices><td class="figure last">${board.cost}</td></#if></tr>
</#list>
</tbody></table>
</#if>
</div>
<#if shopping.sheets?has_content>
<div<#if breaks.sheets> class="section"</#if>>
<#if breaks.sheets><@frame.head say('shopping.title')/></#if>
<h2<#if breaks.sheets> class="top"</#if>>${say('shopping.sheets')}</h2>
<table class="list">
<thead><tr><th>${say('column.stock')}</th><th class="figure">${say('column.sheet-size')}</th><th class="figure">${say('column.sheets')}</th><#if edition.prices><th class="figure last">${cost}</th></#if></tr></thead>
<tbody>
<#list shopping.sheets as sheet>
<tr><td>${sheet.stock}</td><td class="figure">${sheet.size}</td><td class="figure">${sheet.count}</td><#if edition.prices><td class="figure last">${sheet.cost}</td></#if></tr>
</#list>
</tbody></table>
</div>
</#if>
<div<#if breaks.items> class="section"</#if>>
<#if breaks.items><@frame.head say('shopping.title')/></#if>
<#if shopping.items?has_content>
<h2<#if breaks.items> class="top"</#if>>${say('shopping.hardware')}</h2>
<table class="list<#if shopping.items?size gt 30> long</#if>">
<thead><tr><th>${say('column.item')}</th><th class="figure">${say('column.needed')}</th><th class="figure">${say('column.pack-size')}</th><th class="figure">${say('column.packs')}</th><#if edition.prices><th class="figure last">${cost}</th></#if></tr></thead>
<tbody>
<#list shopping.items as item>
<tr><td>${item.item}${item.note}</td><td class="figure">${item.count}</td><td class="figure">${item.packSize}</td><td class="figure">${item.packs}</td><#if edition.prices><td class="figure last">${item.cost}</td></#if></tr>
</#list>
</tbody></table>
</#if>
</div>
<#if shopping.supplies.rows?has_content>
<div<#if breaks.supplies> class="section"</#if>>
<#if breaks.supplies><@frame.head say('shopping.title')/></#if>
<h2<#if breaks.supplies> class="top"</#if>>${say('shopping.supplies')}</h2>
<table class="list">
<thead><tr><th>${say('column.product')}</th><th>${say('column.for')}</th><th class="figure">${say('column.takes')}</th><th class="figure">${say('column.sold-in')}</th><th class="figure">${say('column.cans')}</th><#if edition.prices><th class="figure last">${cost}</th></#if></tr></thead>
<tbody>
<#list shopping.supplies.rows as row>
<tr><td>${row.product}</td><td>${row.area}</td><td class="figure">${row.takes}</td><td class="figure">${row.soldIn}</td><td class="figure">${row.cans}</td><#if edition.prices><td class="figure last">${row.cost}</td></#if></tr>
</#list>
</tbody></table>
<#if shopping.supplies.ranges><p class="quiet small">${say('supply.ranges')}</p></#if>
</div>
</#if>
<div>
<#if shopping.besides.sentence?has_content><p class="small">${shopping.besides.sentence}</p></#if>
<#if edition.prices && shopping.total?has_content>
<table class="list"><tbody><tr class="total"><td><#if shopping.currency?has_content>${say('shopping.total.in', shopping.currency)}<#else>${say('shopping.total')}</#if></td><td class="figure last">${shopping.total}</td></tr></tbody></table>
</#if>
<#assign below = shopping.below(edition.prices)>
<#if below?has_content><p class="quiet small"><#list below as key>${say(key)}<#sep> </#list></p></#if>
</div>
