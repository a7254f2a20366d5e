<#-- The outline of the PDF. Gets: outline, a list of places (anchor, number, title, within: places). -->
<#macro place each><bookmark name="<#if each.number?has_content>${each.number}  </#if>${each.title}" href="#${each.anchor}"><#list each.within as inner><@place inner/></#list></bookmark>
</#macro>
<bookmarks>
<#list outline as each><@place each/></#list>
</bookmarks>
