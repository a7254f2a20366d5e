<#-- What the maker allows the buyer, in the maker's own words. Gets: licence (lines; breaks: whether it begins a page);
     cover (maker, edition, date). -->
<#import "/frame/macros.ftl" as frame>
<div<#if licence.breaks> class="section"</#if>>
<@frame.opening "licence" say('licence.title') licence.breaks/>
<#list licence.lines as line><p>${line}</p></#list>
</div>
