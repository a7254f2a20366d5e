<#-- The exploded view with its parts list. Gets: exploded (a drawing's place); cutList.rows (mark,
     part, count). -->
<#import "/frame/macros.ftl" as frame>
<div class="section" id="exploded">
<@frame.head say('exploded.title')/>
<h1>${say('exploded.title')}</h1>
<div class="picture"><@frame.drawing exploded/></div>
<table class="columns parts-list"><tr>
<#assign height = (cutList.rows?size / 3)?ceiling>
<#list cutList.rows?chunk(height) as column><td class="column<#if column?index == 2> end</#if>">
<table class="side-list">
<#list column as row><tr><td class="mark"><a href="#part-${row.mark}">${row.mark}</a></td><td>${row.part}</td><td class="figure">${row.count}</td></tr></#list>
</table></td>
</#list>
<#list (cutList.rows?size / height)?ceiling..<3 as missing><td class="column<#if missing == 2> end</#if>"></td></#list>
</tr></table>
</div>
