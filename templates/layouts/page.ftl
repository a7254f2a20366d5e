<#-- The layouts of the sheets. Gets: layouts.stocks, as sheets.ftl takes them. -->
<#import "/frame/macros.ftl" as frame>
<#import "/layouts/sheets.ftl" as layout>
<#if layouts.stocks?has_content>
<div class="section" id="layouts">
<@frame.head say('layouts.title')/>
<h1>${say('layouts.title')}</h1>
<p class="lead">${say('layouts.lead')}</p>
<@layout.sheets layouts.stocks/>
</div>
</#if>
