<#-- The cover. Gets: cover (name, maker, summary, edition, date, figures: label and value, drawing);
     paper. -->
<#import "/frame/macros.ftl" as frame>
<div class="cover" id="cover">
<#assign room = paper.textHeightMm * 0.58>
<div class="cover-drawing" style="height:${room}mm;padding-top:0"><div style="padding-top:${(room - cover.drawing.heightMm) / 2}mm"><@frame.drawing cover.drawing/></div></div>
<div class="cover-name<#if cover.name?length gt 26> cover-long</#if>">${cover.name}</div>
<#if cover.summary?has_content><p class="cover-summary">${cover.summary}</p></#if>
<table class="figures"><tr>
<#list cover.figures as figure><td><div class="figure-label">${figure.label}</div><div class="figure-value">${figure.value}</div></td>
</#list>
</tr></table>
<p class="cover-imprint"><#if cover.maker?has_content>${cover.maker}</#if><#if cover.edition?has_content><#if cover.maker?has_content> · </#if>${say('cover.edition', cover.edition)}</#if><#if cover.date?has_content> · ${cover.date}</#if></p>
</div>
