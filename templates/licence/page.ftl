<#-- What the maker allows the buyer, in the maker's own words. Gets: licence, its lines; cover (maker, edition, date). -->
<#import "/frame/macros.ftl" as frame>
<div class="section" id="licence">
<@frame.head say('licence.title')/>
<h1>${say('licence.title')}</h1>
<#list licence as line><p>${line}</p></#list>
</div>
