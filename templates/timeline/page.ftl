<#-- The work day by day. Gets: timeline (lead, path, drawings; waits: step, title, time,
     meanwhile; waitsBreak, whether their list begins a page). -->
<#import "/frame/macros.ftl" as frame>
<#list timeline.drawings as drawing>
<div class="section"<#if drawing?is_first> id="timeline"</#if>>
<@frame.head say('timeline.title')/>
<#if drawing?is_first>
<h1>${say('timeline.title')}</h1>
<p class="lead">${timeline.lead}</p>
<p>${timeline.path}</p>
</#if>
<div class="picture"><@frame.drawing drawing/></div>
<#if drawing?is_last && timeline.waits?has_content>
<#if timeline.waitsBreak></div>
<div class="section"></#if>
<h2<#if timeline.waitsBreak> class="top"</#if>>${say('timeline.meanwhile')}</h2>
<table class="list">
<thead><tr><th>${say('timeline.while')}</th><th>${say('timeline.for')}</th><th class="last">${say('timeline.do')}</th></tr></thead>
<tbody>
<#list timeline.waits as wait><tr><td><b><a href="#step-${wait.step}">${wait.step}</a></b>  ${wait.title}</td><td>${wait.time}</td><td class="last">${wait.meanwhile}</td></tr>
</#list>
</tbody></table>
</#if>
</div>
</#list>
