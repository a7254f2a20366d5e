<#-- The finish and the findings worth telling. Gets: finish, none or one (product, how, coats, dryHours, allCoats,
     last, none or one (product, coats, dryHours),
     sandTo, triedOn, woods, area, oily: whether its rags can catch fire); notes.findings (severity, message, hints, code); end.findingsFirst, whether
     the findings stand on the page of the contents; end.finishFollows, whether this goes on below the
     last step. -->
<#import "/frame/macros.ftl" as frame>
<#assign last = notes.findings?has_content && !end.findingsFirst>
<#if finish?has_content || last>
<div class="finish<#if !end.finishFollows> section</#if>">
<#list finish as f>
<#if !end.finishFollows><@frame.head say('finish.title')/></#if>
<h1 id="finish"<#if end.finishFollows> class="follows"</#if>>${say('finish.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> <#list 1..3 as i><#if i gt 1 || f.oily>${say('finish.care.' + i)} </#if></#list></div>
<h2>${say('finish.test')}</h2>
<p>${say('finish.test.text', f.woods, f.sandTo, f.coats)} <#if f.triedOn?has_content>${say('finish.tried', f.triedOn)}<#else>${say('finish.untried')}</#if></p>
<p class="sign">${say('finish.test.sign')}</p>
<h2>${say('finish.schedule')}</h2>
<table class="list">
<tbody>
<tr><td>${say('finish.product')}</td><td>${f.product}</td></tr>
<#if f.how?has_content><tr><td>${say('finish.how')}</td><td>${say('finish.how.' + f.how)}</td></tr></#if>
<tr><td>${say('finish.area')}</td><td>${f.area}</td></tr>
<tr><td>${say('finish.sand')}</td><td>${say('finish.grit', f.sandTo)}</td></tr>
<tr><td>${say('finish.coats')}</td><td>${f.coats}</td></tr>
<tr><td>${say('finish.dry')}</td><td>${say('time.hours', f.dryHours)}</td></tr>
<#list f.last as over><tr><td>${say('finish.last')}</td><td>${say((over.coats == 1)?then('finish.last.one', 'finish.last.more'), over.product, over.dryHours, over.coats)}</td></tr></#list>
</tbody></table>
<h2>${say('finish.record')}</h2>
<table class="list coats">
<thead><tr><th>${say('finish.coat')}</th><th>${say('finish.put-on')}</th><th>${say('finish.sanded')}</th><th class="last">${say('finish.remarks')}</th></tr></thead>
<tbody>
<#list 1..f.allCoats as coat><tr><td>${coat}<#if (coat gt f.coats)><#list f.last as over>, ${over.product}</#list></#if></td><td></td><td></td><td class="last"></td></tr></#list>
</tbody></table>
</#list>
<#if last>
<div class="findings">
<#if !finish?has_content><@frame.head say('findings.title')/></#if>
<h1 id="findings" class="follows">${say('findings.title')}</h1>
<p class="lead">${say('findings.lead')}</p>
<@frame.findings/>
</div>
</#if>
</div>
</#if>
