<#-- The finish and the findings worth telling. Gets: finish, none or one (product, coats, dryHours,
     sandTo, triedOn); notes.findings (severity, message, hints, code). -->
<#import "/frame/macros.ftl" as frame>
<#if finish?has_content || notes.findings?has_content>
<div class="section">
<#list finish as f>
<@frame.head say('finish.title')/>
<h1 id="finish">${say('finish.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> <#list 1..3 as i>${say('finish.care.' + i)} </#list></div>
<table class="list">
<tbody>
<tr><td>${say('finish.product')}</td><td>${f.product}</td></tr>
<tr><td>${say('finish.sand')}</td><td>${say('finish.grit', f.sandTo)}</td></tr>
<tr><td>${say('finish.coats')}</td><td>${f.coats}</td></tr>
<tr><td>${say('finish.dry')}</td><td>${say('time.hours', f.dryHours)}</td></tr>
<tr><td>${say('finish.tried')}</td><td><#if f.triedOn?has_content>${f.triedOn}<#else>${say('finish.untried')}</#if></td></tr>
</tbody></table>
</#list>
<#if notes.findings?has_content>
<div class="findings">
<#if !finish?has_content><@frame.head say('findings.title')/></#if>
<h1 id="findings" class="follows">${say('findings.title')}</h1>
<p class="lead">${say('findings.lead')}</p>
<table class="list">
<tbody>
<#list notes.findings as finding>
<tr><td class="mark">${finding.severity}</td><td>${finding.message}.<#list finding.hints as hint> ${hint}.</#list></td><td class="last quiet">${finding.code}</td></tr>
</#list>
</tbody></table>
</div>
</#if>
</div>
</#if>
