<#-- The hours of each stage. Gets: recorded.hours (rows and total: title, planned, done, difference, say);
     recordBreaks.hours, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<#import "/record/sums.ftl" as sums>
<div class="record<#if recordBreaks.hours> section</#if>">
<@frame.opening "hours" say('record.hours') recordBreaks.hours/>
<@sums.table recorded.hours say('record.stage') say('record.taken')/>
</div>
