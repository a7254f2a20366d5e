<#-- What all sections share: the running head, a drawing's place, a section's title.
     head gets the section's name; drawing gets a DrawingBox (name, widthMm, heightMm). -->
<#macro head section><div class="head"><table class="head-line"><tr><td><#if cover.name?length gt 60>${cover.name[0..<57]}…<#else>${cover.name}</#if></td><td class="right">${section}</td></tr></table></div></#macro>
<#-- A drawing in its place, or smaller by a factor where what stands with it leaves less. -->
<#macro drawing box fit=1><div class="drawing" data-name="${box.name}" style="width:${box.widthMm * fit}mm;height:${box.heightMm * fit}mm"></div></#macro>
<#-- The classes of a page that shows a drawing in its place: it is turned where that is wider than an upright one.
     Gets: paper. -->
<#function sheet box><#return paper.turnsFor(box.widthMm)?then('section turned', 'section')></#function>
<#-- A size, or several; in both units what stands in brackets takes a line of its own. -->
<#macro figure text><#if text?contains(' [')>${text?keep_before(' [')}<br/>[${text?keep_after(' [')}<#else>${text}</#if></#macro>
<#-- The band that marks a page of a preview. Gets: edition.preview. -->
<#macro preview><#if edition.preview><div class="preview-band">${say('preview.mark')}</div></#if></#macro>
<#macro title id text><h1 id="${id}">${text}</h1></#macro>
<#macro findings><table class="list">
<tbody>
<#list notes.findings as finding>
<tr><td class="mark">${finding.severity}</td><td class="last">${finding.message}.<#list finding.hints as hint> ${hint}.</#list></td></tr>
</#list>
</tbody></table></#macro>
<#-- Numbers of steps, each leading to its step. Gets: runs of steps (from, to). -->
<#macro steps list><#list list.runs as run><span class="kept-together"><a href="#step-${run.from}">${run.from}</a><#if run.to gt run.from>–<a href="#step-${run.to}">${run.to}</a></#if><#sep>,</#sep></span><#sep> </#list></#macro>
<#-- The title of a section that may go on below the one before it. Gets: its anchor, its title, whether it begins a page. -->
<#macro opening id text breaks><#if breaks><@head text/></#if><h1 id="${id}"<#if !breaks> class="follows"</#if>>${text}</h1></#macro>
