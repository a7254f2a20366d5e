<#-- Before you start: cautions first, then how to read the plan, then the contents.
     Gets: notes (cautions: text, steps; findings); finish; layouts; hardware; steps; units; checkBar. -->
<#import "/frame/macros.ftl" as frame>
<#macro entry id text><tr><td><a href="#${id}">${text}</a></td><td class="right"><a href="#${id}" class="target"></a></td></tr></#macro>
<div class="section" id="before">
<@frame.head say('before.title')/>
<h1>${say('before.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> ${say('before.first')}</div>
<table class="two"><tr><td class="column">
<h2>${say('before.safety')}</h2>
<ul class="plain">
<#list 1..6 as i><li>${say('before.safety.' + i)}</li></#list>
</ul>
</td><td class="gutter"></td><td class="column">
<h2>${say('before.reading')}</h2>
<ul class="plain">
<#list 1..5 as i><li>${say('before.reading.' + i, units)}</li></#list>
</ul>
</td></tr></table>
<#if notes.cautions?has_content>
<h2>${say('before.in-steps')}</h2>
<ul class="plain">
<#list notes.cautions as caution><li>${caution.text} <span class="quiet">${say('before.steps', caution.steps)}</span></li>
</#list>
</ul>
</#if>
<table class="two keep"><tr><td class="bars">
<h2>${say('before.check')}</h2>
<p>${say('before.check.text')}</p>
<@frame.drawing checkBar/>
</td><td class="contents-column">
<h2>${say('before.contents')}</h2>
<table class="contents">
<@entry 'cut-list' say('cutlist.title')/>
<@entry 'shopping' say('shopping.title')/>
<#if hardware.rows?has_content><@entry 'hardware' say('hardware.title')/></#if>
<#if layouts.stocks?has_content><@entry 'layouts' say('layouts.title')/></#if>
<@entry 'exploded' say('exploded.title')/>
<@entry 'parts' say('parts.title')/>
<#list steps.stages as stage><@entry 'stage-' + stage.number say('steps.stage', stage.number, stage.title)/></#list>
<#if finish?has_content><@entry 'finish' say('finish.title')/></#if>
<#if notes.findings?has_content><@entry 'findings' say('findings.title')/></#if>
</table>
</td></tr></table>
</div>
