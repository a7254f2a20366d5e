<#-- The photos. Gets: photos.pages, pages of rows of pictures (name, widthMm, heightMm, shows, caption, about: mark, step and
     day in words), one or two in a row. -->
<#import "/frame/macros.ftl" as frame>
<#list photos.pages as rows>
<div class="section record">
<@frame.head say('record.photos')/>
<#if rows?is_first><h1 id="photos">${say('record.photos')}</h1></#if>
<#list rows as row>
<table class="photos"><tr>
<#list row as each><td<#if row?size gt 1 || photos.columns == 2> class="half"</#if>><div class="photo" data-name="${each.name}" title="${each.shows}" style="width:${each.widthMm}mm;height:${each.heightMm}mm"></div>
<p class="caption">${each.caption}<#if each.about?has_content> <span class="quiet">${each.about}</span></#if></p></td></#list>
<#if row?size == 1 && photos.columns == 2><td class="half"></td></#if>
</tr></table>
</#list>
</div>
</#list>
