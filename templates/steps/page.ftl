<#-- The steps, stage by stage. Gets: steps.stages (number, title, steps: number, text (title,
     sentences, cautions, tools, settings: name, mark, value), pictures, parts (mark, title, count),
     hardware (item, count), working, waiting). -->
<#import "/frame/macros.ftl" as frame>
<#macro block title><div class="side-block"><h3>${title}</h3><#nested></div></#macro>
<div class="section" id="steps">
<#list steps.stages as stage>
<#list stage.steps as step>
<div class="step" id="step-${step.number}">
<#if step?is_first>
<@frame.head say('steps.head', stage.number, stage.title)/>
<div class="stage-name" id="stage-${stage.number}">${say('steps.stage', stage.number, stage.title)}</div>
</#if>
<table class="step-head"><tr><td class="step-number">${step.number}</td><td><div class="step-title">${step.text.title}</div></td></tr></table>
<#list step.pictures as picture><div class="picture"><@frame.drawing picture/></div></#list>
<table class="step-body"><tr><td class="do">
<#list step.text.cautions as caution><div class="caution"><b>${say('caution.label')}</b> ${caution}</div></#list>
<table class="sentences">
<#list step.text.sentences as sentence><tr><td class="n">${sentence?counter}.</td><td>${sentence}</td></tr></#list>
</table>
</td><td class="side">
<#if step.parts?has_content><@block say('step.parts')><table class="side-list">
<#list step.parts as part><tr><td class="mark"><a href="#part-${part.mark}">${part.mark}</a></td><td>${part.title}</td><td class="figure">${part.count}</td></tr></#list>
</table></@block></#if>
<#if step.hardware?has_content><@block say('step.hardware')><table class="side-list">
<#list step.hardware as item><tr><td>${item.item}</td><td class="figure">${item.count}</td></tr></#list>
</table></@block></#if>
<#if step.text.tools?has_content><@block say('step.tools')><p>${step.text.tools?join('; ')}</p></@block></#if>
<#if step.text.settings?has_content><@block say('step.settings')><table class="side-list"><#list step.text.settings as setting><tr><td><#if setting.mark?has_content><b>${setting.mark}</b>  </#if>${setting.name}</td><td class="figure">${setting.value}</td></tr></#list></table></@block></#if>
<@block say('step.time')><p><#if step.waiting?has_content>${say('step.work-and-wait', step.working, step.waiting)}<#else>${say('step.work', step.working)}</#if></p></@block>
</td></tr></table>
</div>
</#list>
</#list>
</div>
