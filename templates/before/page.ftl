<#-- Before you start: cautions first, then how to read the plan; then the contents.
     Gets: before (pages of cautions in columns: text, steps; contentsFollow; checkAtReading, whether the bars stand below how to read the plan; checkFirst, whether the bars stand above the contents; contents: pages of one or two columns of lines: anchor, number: empty for a section, title); notes (findings); reading, how to read the plan sentence by sentence; checkBar; end.findingsFirst, whether the findings stand here. -->
<#import "/frame/macros.ftl" as frame>
<#macro check>
<div class="check">
<table class="beside"><tr><td><div class="check-title">${say('before.check')}</div>${say('before.check.text')}</td><td class="bars"><@frame.drawing checkBar/></td></tr></table>
</div>
</#macro>
<div class="section" id="before">
<@frame.head say('before.title')/>
<h1>${say('before.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> ${say('before.first')}</div>
<table class="two cautions"><tr><td class="column">
<h2>${say('before.safety')}</h2>
<ul class="plain">
<#list 1..6 as i><li>${say('before.safety.' + i)}</li></#list>
</ul>
</td><td class="gutter"></td><td class="column">
<h2>${say('before.reading')}</h2>
<ul class="plain">
<#list reading as each><li>${each}</li></#list>
</ul>
</td></tr></table>
<#if before.checkAtReading><@check/></#if>
<#list before.pages as page>
<div<#if page.breaks> class="section"</#if>>
<h2<#if page.breaks> class="top"</#if>>${say('before.in-steps')}</h2>
<table class="two cautions"><tr>
<#list page.columns as half><td class="column"><ul class="plain">
<#list half as caution><li>${caution.text} <span class="quiet">${say(caution.steps?matches('\\d+')?then('before.step', 'before.steps'), caution.steps)}</span></li>
</#list>
</ul></td><#sep><td class="gutter"></td></#list><#if page.columns?size == 1><td class="gutter"></td><td class="column"></td></#if>
</tr></table>
</div>
</#list>
<#if before.checkFirst><@check/></#if>
</div>
<div<#if !before.contentsFollow> class="section"</#if> id="contents">
<#if !before.contentsFollow><@frame.head say('before.contents')/></#if>
<h1<#if before.contentsFollow> class="follows"</#if>>${say('before.contents')}</h1>
<#list before.contents as spread>
<table class="two<#if !spread?is_first> next-spread</#if>"><tr>
<#list spread as column><td class="column"><table class="contents"><colgroup><col class="number"/><col/><col class="page"/></colgroup>
<#list column as entry>
<#if entry.number?has_content><tr><td class="n">${entry.number}</td><td><a href="#${entry.anchor}">${entry.title}</a></td><td class="page"><a href="#${entry.anchor}" class="target"></a></td></tr>
<#else><tr class="main"><td colspan="2"><a href="#${entry.anchor}">${entry.title}</a></td><td class="page"><a href="#${entry.anchor}" class="target"></a></td></tr></#if>
</#list>
</table></td><#sep><td class="gutter"></td></#list><#if spread?size == 1><td class="gutter"></td><td class="column"></td></#if>
</tr></table>
</#list>
<#if end.findingsFirst>
<h2 id="findings">${say('findings.title')}</h2>
<p>${say('findings.lead')}</p>
<@frame.findings/>
</#if>
<#if !before.checkFirst && !before.checkAtReading><@check/></#if>
</div>
