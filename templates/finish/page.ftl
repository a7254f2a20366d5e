<#-- The finish and the findings worth telling. Gets: finish, none or one (rows: label, value; test: how the test
     piece is made and whether it has been tried; settled: what was found of it, or empty; coats, allCoats, lastProduct: empty or what goes on over the coats; oily:
     whether its rags can catch fire; masks: on, what); notes.findings (severity, message, hints, code);
     end.findingsFirst, whether the findings stand on the page of the contents; end.finishFollows, whether this goes on
     below the last step; end.restBreaks, whether what is kept
     bare begins a page; end.findingsBreak, whether the findings begin a page behind the finish. -->
<#import "/frame/macros.ftl" as frame>
<#assign last = notes.findings?has_content && !end.findingsFirst>
<#if finish?has_content || last>
<div class="finish<#if !end.finishFollows> section</#if>">
<#list finish as f>
<#if !end.finishFollows><@frame.head say('finish.title')/></#if>
<h1 id="finish"<#if end.finishFollows> class="follows"</#if>>${say('finish.title')}</h1>
<div class="caution"><b>${say('caution.label')}</b> <#list 1..3 as i><#if i gt 1 || f.oily>${say('finish.care.' + i)} </#if></#list></div>
<h2>${say('finish.test')}</h2>
<p>${f.test}</p>
<#if f.settled?has_content><p>${f.settled}</p><#else><p class="sign">${say('finish.test.sign')}</p></#if>
<h2>${say('finish.schedule')}</h2>
<table class="list finish-rows">
<colgroup><col style="width:32%"/><col style="width:68%"/></colgroup>
<tbody>
<#list f.rows as row><tr><td>${row.label}</td><td class="last">${row.value}</td></tr>
</#list>
</tbody></table>
<#if end.restBreaks></div>
<div class="finish section"><@frame.head say('finish.title')/></#if>
<h2<#if end.restBreaks> class="top"</#if>>${say('finish.mask')}</h2>
<p>${say(f.masks?has_content?then('finish.mask.lead', 'finish.mask.none'))}</p>
<#if f.masks?has_content>
<table class="list finish-rows">
<colgroup><col style="width:32%"/><col style="width:68%"/></colgroup>
<thead><tr><th>${say('finish.mask.on')}</th><th class="last">${say('finish.mask.where')}</th></tr></thead>
<tbody>
<#list f.masks as mask><tr><td>${mask.on}</td><td class="last">${mask.what}</td></tr>
</#list>
</tbody></table>
</#if>
<h2>${say('finish.record')}</h2>
<table class="list coats">
<thead><tr><th>${say('finish.coat')}</th><th>${say('finish.put-on')}</th><th>${say('finish.sanded')}</th><th class="last">${say('finish.remarks')}</th></tr></thead>
<tbody>
<#list 1..f.allCoats as coat><tr><td>${coat}<#if (coat gt f.coats)>, ${f.lastProduct}</#if></td><td></td><td></td><td class="last"></td></tr></#list>
</tbody></table>
</#list>
<#if last>
<div class="findings<#if end.findingsBreak> section</#if>">
<#if end.findingsBreak || !finish?has_content><@frame.head say('findings.title')/></#if>
<h1 id="findings"<#if !end.findingsBreak> class="follows"</#if>>${say('findings.title')}</h1>
<p class="lead">${say('findings.lead')}</p>
<@frame.findings/>
</div>
</#if>
</div>
</#if>
