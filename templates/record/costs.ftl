<#-- What was paid beside what the shopping list comes to. Gets: recorded.costs (rows and total: title, planned, done,
     difference, say); recordBreaks.costs, whether it begins a page. -->
<#import "/frame/macros.ftl" as frame>
<#import "/record/sums.ftl" as sums>
<div class="record<#if recordBreaks.costs> section</#if>">
<@frame.opening "costs" say('record.costs') recordBreaks.costs/>
<@sums.table recorded.costs say('record.group') say('record.paid')/>
</div>
