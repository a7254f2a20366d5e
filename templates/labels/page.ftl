<#-- Labels to cut out or to print on label sheets, one for each piece of wood. Gets: labels (widthMm, heightMm:
     of one label; pages of rows of labels: mark, number, of, name, hand, sizes; grained,
     showFace, step); units. Heights are those that LabelPages counts with. -->
<#import "/frame/macros.ftl" as frame>
<#list labels.pages as rows>
<div class="section"<#if rows?is_first> id="labels"</#if>>
<@frame.head say('label.title')/>
<p class="label-lead">${say('label.lead', units)}</p>
<table class="labels">
<#list rows as row><tr>
<#list row as label><td class="label" style="width:${labels.widthMm}mm;height:${labels.heightMm}mm">
<table class="label-inside"><tr><td class="label-mark"><div class="label-letter">${label.mark}</div><div>${say('label.number', label.number, label.of)}</div><#if label.hand?has_content><div>${label.hand}</div></#if><#if label.step?has_content><div class="label-step">${say('label.step', label.step)}</div></#if></td>
<td class="label-text"><div class="label-name">${label.name}</div>
<div><@frame.figure label.sizes/></div>
<div><#if label.grained><span class="label-arrow">↔</span> ${say('label.grain')}<#else>${say('label.grain-any')}</#if></div>
<#if label.showFace?has_content><div>${say('label.show-face', label.showFace)}</div></#if></td></tr></table></td>
</#list>
<#list row?size..<labels.columns as missing><td class="no-label"></td></#list>
</tr></#list>
</table>
</div>
</#list>
