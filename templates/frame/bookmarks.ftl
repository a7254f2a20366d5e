<#-- The outline of the PDF. Gets: say; general.entries (anchor, title); parts.entries (anchor, mark, title); steps.stages (number, title,
     steps); layouts.stocks; finish; notes; templates.sheets (title, drawing). -->
<bookmarks>
<bookmark name="${say('cover.title')}" href="#cover"/>
<bookmark name="${say('before.title')}" href="#before"/>
<#if end.findingsFirst><bookmark name="${say('findings.title')}" href="#findings"/></#if>
<bookmark name="${say('cutlist.title')}" href="#cut-list"/>
<#if glueUps.rows?has_content><bookmark name="${say('glue-ups.title')}" href="#glue-ups"/></#if>
<bookmark name="${say('shopping.title')}" href="#shopping"/>
<#if hardware.rows?has_content><bookmark name="${say('hardware.title')}" href="#hardware"/></#if>
<#if layouts.stocks?has_content><bookmark name="${say('layouts.title')}" href="#layouts"/></#if>
<#if general.entries?has_content><bookmark name="${say('general.title')}" href="#general">
<#list general.entries as drawing><bookmark name="${drawing.title}" href="#${drawing.anchor}"/>
</#list>
</bookmark></#if>
<bookmark name="${say('exploded.title')}" href="#exploded"/>
<bookmark name="${say('parts.title')}" href="#parts">
<#list parts.entries as part><bookmark name="${part.mark}  ${part.title}" href="#${part.anchor}"/>
</#list>
</bookmark>
<bookmark name="${say('timeline.title')}" href="#timeline"/>
<#list steps.stages as stage>
<bookmark name="${stage.title}" href="#stage-${stage.number}">
<#list stage.steps as step><bookmark name="${step.number}  ${step.text.title}" href="#step-${step.number}"/>
</#list>
</bookmark>
</#list>
<#if finish?has_content><bookmark name="${say('finish.title')}" href="#finish"/></#if>
<#if notes.findings?has_content && !end.findingsFirst><bookmark name="${say('findings.title')}" href="#findings"/></#if>
<#if templates.sheets?has_content><bookmark name="${say('fullsize.title')}" href="#fullsize">
<#list templates.sheets as sheet><#if sheet.isFirst()><bookmark name="${sheet.title}" href="#${sheet.drawing.name}"/>
</#if></#list>
</bookmark></#if>
</bookmarks>
