<#-- The general drawings, page by page as they were measured: the piece, its section, each drawer and
     door. Gets: general.pages, each a list of drawings (anchor, title, lead, scale, drawing: a drawing's
     place); unit; cover (edition, date). The title block has the fields of ISO 7200. -->
<#import "/frame/macros.ftl" as frame>
<#macro field name value class=""><td class="${class}"><span class="field">${say('block.' + name)}</span>${value}</td></#macro>
<#list general.pages as page>
<div class="${frame.sheet(page?first.drawing)}"<#if page?is_first> id="general"</#if>>
<@frame.head say('general.title')/>
<#list page as entry>
<div class="part" id="${entry.anchor}">
<div class="part-title">${entry.title}</div>
<p class="part-lead">${entry.lead}</p>
<div class="picture"><@frame.drawing entry.drawing/></div>
<table class="block"><tr>
<td class="first block-general"><span class="field">${say('block.drawing')}</span><b>${entry.title}</b></td>
<@field 'projection' say('general.projection')/><@field 'scale' entry.scale 'block-scale'/><@field 'unit' unit/><#if cover.edition?has_content><@field 'edition' cover.edition/></#if><@field 'date' cover.date 'block-date'/>
<td class="block-sheet"><span class="field">${say('block.sheet')}</span><span class="page-number"></span>${say('foot.of')}<span class="page-count"></span></td>
</tr></table>
</div>
</#list>
</div>
</#list>
