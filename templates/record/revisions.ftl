<#-- How the plan has changed. Gets: recorded.revisions (date, change, reason), empty texts for lines to fill in;
     recordBreaks.revisions, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<div class="record<#if recordBreaks.revisions> section</#if>">
<@frame.opening "revisions" say('record.revisions') recordBreaks.revisions/>
<table class="list fill">
<thead><tr><th>${say('record.date')}</th><th>${say('record.change')}</th><th class="last">${say('record.reason')}</th></tr></thead>
<tbody>
<#list recorded.revisions as each><tr><td class="day">${each.date}</td><td class="words">${each.change}</td><td class="last">${each.reason}</td></tr>
</#list>
</tbody></table>
</div>
