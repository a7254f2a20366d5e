<#-- The steps, page by page as they were measured. Gets: steps.pages (stage: number, title; steps:
     opens: none or one stage, slice: what of the step stands on the page (from, to: its sentences, below: whether
     its sizes stand below them, sizes: rows of these, besides: whether what stands beside its sentences is on it, begins, ends), step: number, text (title, sentences, cautions, tools, settings: name,
     mark, value), pictures, strips of
     steps that work on parts (above(): those above the sentences, asides(): those below the lists), beside: what stands beside its sentences, parts (mark, title, count), sizes (mark, count, size), hardware (mark, item,
     count), partsInRow: whether the parts stand in a row of marks, firstColumn: how many sentences stand in the first of two columns, or 0 where the
     picture is as wide as the page; over two pages a narrow picture stands above its sentences, working,
     waiting); heads.steps, what the head of each page says; edition.boxes, whether there is a line to tick and sign, with room for what was measured: of
     several checks below each (step.hasFields()). -->
<#import "/frame/macros.ftl" as frame>
<#macro block title><div class="side-block"><h3>${title}</h3><#nested></div></#macro>
<#macro line title><p class="side-line"><b>${title}</b> <#nested></p></#macro>
<#macro link mark><a href="#part-${mark}">${mark}</a></#macro>
<#macro times count><#if count != "1"> × ${count}</#if></#macro>
<#macro marks parts><#list parts as part><a href="#part-${part.mark}">${part.mark}<#if part.count != "1"> × ${part.count}</#if><#sep>,</#sep></a><#sep> </#list></#macro>
<#macro time step><#if step.waiting?has_content>${say('step.work-and-wait', step.working, step.waiting)}<#else>${say('step.work', step.working)}</#if></#macro>
<#macro hardware step><@block say('step.hardware')><table class="side-list">
<#list step.hardware as item><tr><td class="mark">${item.mark}</td><td>${item.item}</td><td class="figure count">${item.count}</td></tr></#list>
</table></@block></#macro>
<#macro settings step><@block say('step.settings')><table class="side-list">
<#list step.text.settings as setting><tr><td><#if setting.mark?has_content><b>${setting.mark}</b>  </#if>${setting.name}</td><td class="figure value"><@frame.figure setting.value/></td></tr>
<#if edition.boxes && step.hasFields()><tr><td class="measured" colspan="2">${say('step.measured')}</td></tr></#if></#list>
</table></@block></#macro>
<#-- Beside a picture, every kind of thing has its own list; without one, what can stand in a line does. -->
<#macro large step>
<#if step.partsInRow><@block say('step.parts')><p><@marks step.parts/></p></@block>
<#elseif step.parts?has_content><@block say('step.parts')><table class="side-list">
<#list step.parts as part><tr><td class="mark"><@link part.mark/></td><td>${part.title}</td><td class="figure count">${part.count}</td></tr></#list>
</table></@block></#if>
<#if step.hardware?has_content><@hardware step/></#if>
<#if step.text.tools?has_content><@block say('step.tools')><p>${step.text.tools?join('; ')}</p></@block></#if>
<#if step.text.settings?has_content><@settings step/></#if>
<@block say('step.time')><p><@time step/></p></@block>
</#macro>
<#macro small step below>
<#if below && step.sizes?has_content><#elseif step.sizes?has_content><@block say('step.sizes')><table class="side-list">
<#list step.sizes as row><tr><td class="sized"><b><@link row.mark/></b><@times row.count/></td><td class="figure"><@frame.figure row.size/></td></tr></#list>
</table></@block>
<#elseif step.parts?has_content><@line say('step.parts')><@marks step.parts/></@line></#if>
<#if step.hardware?has_content><@hardware step/></#if>
<#if step.text.settings?has_content><@settings step/></#if>
<#if step.text.tools?has_content><@line say('step.tools')>${step.text.tools?join('; ')}</@line></#if>
<@line say('step.time')><@time step/></@line>
</#macro>
<#macro sizesBelow rows><@block say('step.sizes')><table class="side-list sizes-below">
<#list rows as row><tr><#list row as each><td class="sized"><b><@link each.mark/></b><@times each.count/></td><td class="figure"><@frame.figure each.size/></td><#sep><td class="gap"></td></#sep></#list><#list row?size..<rows[0]?size as missing><td class="gap"></td><td class="gap"></td><td class="gap"></td></#list></tr></#list>
</table></@block></#macro>
<#macro cautions step><#if step.text.cautions?has_content><div class="caution">
<#list step.text.cautions as caution><p><#if caution?is_first><b>${say('caution.label')}</b> </#if>${caution}</p></#list></div></#if></#macro>
<#-- A remark of the maker is no action and has no number. -->
<#macro sentences step from to><#local note = say('step.note')><table class="sentences">
<#list step.text.sentences[from..<to] as sentence><tr><td class="n"><#if !sentence?starts_with(note)>${step.text.sentences[0..from + sentence?index]?filter(each -> !each?starts_with(note))?size}.</#if></td><td>${sentence}</td></tr></#list>
</table></#macro>
<#macro besides step slice><#if slice.besides><#list step.beside as drawing><div class="picture"><@frame.drawing drawing/></div></#list></#if></#macro>
<#macro pictures step><#list step.pictures as picture><div class="picture"><@frame.drawing picture/></div></#list></#macro>
<#list steps.pages as page>
<div class="section"<#if page?is_first> id="steps"</#if>>
<@frame.head heads.steps[page?index]/>
<#list page.steps as placed>
<#assign step = placed.step>
<#assign slice = placed.slice>
<div class="step<#if !step.pictures?has_content> small-step</#if><#if placed?is_last> last-step</#if>"<#if slice.begins> id="step-${step.number}"</#if>>
<#if slice.begins>
<#list placed.opens as stage><div class="stage-name" id="stage-${stage.number}">${say('steps.stage', stage.number, stage.title)}</div></#list>
<table class="step-head"><tr><td class="step-number">${step.number}</td><td class="step-title<#if step.text.hasLongTitle()> long-title</#if>">${step.text.title}</td></tr></table>
<#else><div class="step-again">${say('step.continued', step.number)}</div>
</#if>
<#if step.firstColumn gt 0 && !slice.below>
<table class="step-top"><tr><td class="shown"><@pictures step/></td>
<td class="side"><@large step/><@besides step slice/></td></tr></table>
<@cautions step/>
<table class="step-columns"><tr><td class="half"><@sentences step 0 step.firstColumn/></td>
<td class="half end"><@sentences step step.firstColumn step.text.sentences?size/></td></tr></table>
<#else>
<#if slice.begins><#if step.firstColumn == 0><@pictures step/></#if>
<#list step.above() as strip><div class="strip"><@frame.drawing strip/></div></#list></#if>
<#if slice.begins || slice.to gt slice.from>
<table class="step-body"><tr><td class="do">
<#if slice.begins><#if step.firstColumn gt 0><@pictures step/></#if><@cautions step/></#if>
<#if slice.to gt slice.from><@sentences step slice.from slice.to/></#if>
</td><td class="side">
<#if slice.begins><#if step.pictures?has_content><@large step/><#else><@small step slice.below/><#list step.asides() as strip><div class="picture"><@frame.drawing strip/></div></#list></#if></#if>
<@besides step slice/>
</td></tr></table>
</#if>
<#if slice.sizes?has_content><@sizesBelow slice.sizes/></#if>
</#if>
<#if edition.boxes && slice.ends><table class="sign-line"><tr><td class="tick"><span class="box"></span> ${say('step.done')}</td><td class="blank">${say(step.hasFields()?then('record.remarks', 'step.measured'))}</td><td class="initials">${say('step.initials')}</td></tr></table></#if>
</div>
</#list>
</div>
</#list>
