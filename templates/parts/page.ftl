<#-- The part drawings, page by page as they were measured. Gets: parts.pages, each a list of parts
     (anchor, mark, title, line, say, count, stock, grain, scale, drawing); heads.parts, what the head
     of each page says; unit; cover (edition, date). The
     title block has the fields of ISO 7200; the owner stands in the foot. -->
<#import "/frame/macros.ftl" as frame>
<#macro field name value class=""><td class="${class}"><span class="field">${say('block.' + name)}</span>${value}</td></#macro>
<#list parts.pages as page>
<div class="${frame.sheet(page?first.drawing)}"<#if page?is_first> id="parts"</#if>>
<@frame.head heads.parts[page?index]/>
<#list page as part>
<div class="part" id="${part.anchor}">
<div class="part-title"><span class="part-mark">${part.mark}</span> ${part.title}</div>
<p class="part-lead">${part.line}<#if part.say?has_content> ${part.say}</#if></p>
<div class="picture"><@frame.drawing part.drawing/></div>
<table class="block"><tr>
<td class="first block-part"><span class="field">${say('block.part')}</span><b>${part.mark} ${part.title}</b></td>
<@field 'count' part.count/><@field 'stock' part.stock 'block-stock'/><@field 'grain' part.grain 'block-grain'/><@field 'scale' part.scale 'block-scale'/><@field 'unit' unit/><#if cover.edition?has_content><@field 'edition' cover.edition/></#if><@field 'date' cover.date 'block-date'/>
<td class="block-sheet"><span class="field">${say('block.sheet')}</span><span class="page-number"></span>${say('foot.of')}<span class="page-count"></span></td>
</tr></table>
</div>
</#list>
</div>
</#list>
