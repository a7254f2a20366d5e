<#-- The part drawings. Gets: parts.entries (mark, title, line, say, count, stock, grain, scale,
     drawing); unit; cover (name, maker, edition, date). The title block has the fields of ISO 7200. -->
<#import "/frame/macros.ftl" as frame>
<#macro field name><span class="field">${say('block.' + name)}</span></#macro>
<div class="section" id="parts">
<#list parts.entries as part>
<div class="part" id="part-${part.mark}">
<@frame.head say('parts.head', part.mark)/>
<h1><span class="part-mark">${part.mark}</span> ${part.title}</h1>
<p class="lead">${part.line}<#if part.say?has_content> ${part.say}</#if></p>
<div class="picture"><@frame.drawing part.drawing/></div>
<table class="block">
<tr><td class="first" colspan="2"><@field 'part'/><span class="block-name">${part.mark} ${part.title}</span></td><td><@field 'count'/>${part.count}</td><td colspan="2"><@field 'stock'/>${part.stock}</td><td><@field 'grain'/>${part.grain}</td></tr>
<tr class="second"><td class="first"><@field 'owner'/>${cover.maker}</td><td><@field 'scale'/>${part.scale}</td><td><@field 'unit'/>${unit}</td><td><@field 'edition'/>${cover.edition}</td><td><@field 'date'/>${cover.date}</td><td><@field 'sheet'/><span class="page-number"></span>${say('foot.of')}<span class="page-count"></span></td></tr>
</table>
</div>
</#list>
</div>
