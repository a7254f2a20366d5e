<#-- The cover. Gets: cover (name, maker, summary, edition, date, figures and facts: label and value, drawing);
     edition.preview; paper. The drawing takes what the texts below it leave. -->
<#import "/frame/macros.ftl" as frame>
<#assign size = (cover.name?length gt 66)?then(" cover-longest", (cover.name?length gt 22)?then(" cover-long", ""))>
<#assign lines = (cover.summary?length / 85)?ceiling>
<#assign facts = 0><#list cover.facts as fact><#assign facts = facts + (fact.value?length / 95)?ceiling></#list>
<#assign room = [paper.heightMm - 36 - edition.preview?then(82, 70) - lines * 5.6 - facts * 4.4 - (facts gt 0)?then(4, 0), 40]?max>
<#assign fit = [room / cover.drawing.heightMm, 1]?min>
<#assign above = (room - cover.drawing.heightMm * fit) / 2>
<div class="cover" id="cover">
<@frame.preview/>
<div class="cover-drawing" style="height:${room - above}mm;padding-top:${above}mm"><@frame.drawing cover.drawing fit/></div>
<div class="cover-name${size}">${cover.name}</div>
<#if cover.summary?has_content><p class="cover-summary">${cover.summary}</p></#if>
<table class="figures"><tr>
<#list cover.figures as figure><td><div class="figure-label">${figure.label}</div><div class="figure-value">${figure.value}</div></td>
</#list>
</tr></table>
<#if cover.facts?has_content><table class="facts">
<#list cover.facts as fact><tr><td class="fact">${fact.label}</td><td>${fact.value}</td></tr>
</#list></table></#if>
<p class="cover-imprint"><#if cover.maker?has_content>${cover.maker}</#if><#if cover.edition?has_content><#if cover.maker?has_content> · </#if>${say('cover.edition', cover.edition)}</#if><#if cover.date?has_content> · ${cover.date}</#if></p>
</div>
