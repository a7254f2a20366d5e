<#-- What a reader learns before buying: the piece in parts, skills, hours, materials and tools, and no size.
     Gets: preview (picture: a drawing's place; parts: mark, part; skills, tools: texts; materials: name, amount);
     cover.figures (label and value), the overall size not among them; edition.preview. -->
<#-- Whether one of the tools between which a text leaves the choice is in the list by itself. -->
<#function another tool tools>
<#list tool?replace(',', ' ' + say('preview.or') + ' ')?split(' ' + say('preview.or') + ' ') as each>
<#if each?trim != tool && tools?seq_contains(each?trim)><#return true></#if>
</#list>
<#return false>
</#function>
<#import "/frame/macros.ftl" as frame>
<div class="section" id="preview">
<@frame.head say('preview.title')/>
<h1>${say('preview.title')}</h1>
<@frame.preview/>
<div class="picture"><@frame.drawing preview.picture/></div>
<#assign height = (preview.parts?size / 3)?ceiling>
<table class="columns parts-list"><tr>
<#list preview.parts?chunk(height) as column><td class="column<#if column?index == 2> end</#if>"><table class="side-list">
<#list column as each><tr><td class="mark">${each.mark}</td><td>${each.part}</td></tr></#list>
</table></td></#list>
</tr></table>
</div>
<div class="section">
<@frame.head say('preview.title')/>
<@frame.preview/>
<p class="quiet">${say('preview.left-out')}</p>
<table class="two cautions"><tr><td class="column">
<h2>${say('preview.materials')}</h2>
<table class="list"><tbody>
<#list preview.materials as material><tr><td>${material.name}</td><td class="figure last">${material.amount}</td></tr></#list>
</tbody></table>
</td><td class="gutter"></td><td class="column">
<#if preview.skills?has_content>
<h2>${say('preview.skills')}</h2>
<ul class="plain">
<#list preview.skills as skill><li>${skill?cap_first}</li></#list>
</ul>
</#if>
<h2>${say('preview.time')}</h2>
<table class="list"><tbody>
<#list cover.figures as figure><tr><td>${figure.label}</td><td class="figure last">${figure.value}</td></tr></#list>
</tbody></table>
</td></tr></table>
<h2>${say('preview.tools')}</h2>
<p>${preview.tools?filter(tool -> !another(tool, preview.tools))?map(tool -> tool?cap_first)?join('; ')}</p>
</div>
