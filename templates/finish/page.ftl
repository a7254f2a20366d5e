<#-- The finish and the findings worth telling. Gets: finish, none or one (product, coats, dryHours,
     sandTo, triedOn); notes.findings (severity, message, hints, code). -->
<#import "/frame/macros.ftl" as frame>
<#if finish?has_content || notes.findings?has_content>
<div class="section">
<#list finish as f>
<@frame.head say('finish.title')/>
<h1 id="finish">${say('finish.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> <#list 1..3 as i>${say('finish.care.' + i)} </#list></div>
<h2>${say('finish.test')}</h2>
<p>${say('finish.test.text', f.woods, f.sandTo, f.coats)}</p>
<p><#if f.triedOn?has_content>${say('finish.tried', f.triedOn)}<#else>${say('finish.untried')}</#if></p>
<p class="sign">${say('finish.test.sign')}</p>
<h2>${say('finish.schedule')}</h2>
<table class="list">
<tbody>
<tr><td>${say('finish.product')}</td><td>${f.product}</td></tr>
<tr><td>${say('finish.area')}</td><td>${f.area}</td></tr>
<tr><td>${say('finish.sand')}</td><td>${say('finish.grit', f.sandTo)}</td></tr>
<tr><td>${say('finish.coats')}</td><td>${f.coats}</td></tr>
<tr><td>${say('finish.dry')}</td><td>${say('time.hours', f.dryHours)}</td></tr>
</tbody></table>
<h2>${say('finish.record')}</h2>
<table class="list coats">
<thead><tr><th>${say('finish.coat')}</th><th>${say('finish.put-on')}</th><th>${say('finish.sanded')}</th><th class="last">${say('finish.remarks')}</th></tr></thead>
<tbody>
<#list 1..f.coats as coat><tr><td>${coat}</td><td></td><td></td><td class="last"></td></tr></#list>
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
