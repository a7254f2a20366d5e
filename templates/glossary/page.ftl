<#-- The trade terms that this plan uses. Gets: glossary.pages (breaks, first; rows: term, meaning). -->
<#import "/frame/macros.ftl" as frame>
<#list glossary.pages as page>
<div<#if page.breaks> class="section"</#if>>
<#if page.breaks || page.first><@frame.head say('glossary.title')/></#if>
<#if page.first><h1 id="glossary"<#if !page.breaks> class="follows"</#if>>${say('glossary.title')}</h1></#if>
<table class="list tools">
<colgroup><col style="width:20%"/><col style="width:80%"/></colgroup>
<tbody>
<#list page.rows as row>
<tr><td><b>${row.term}</b></td><td class="last">${row.meaning}</td></tr>
</#list>
</tbody></table>
</div>
</#list>
