<#-- The joints of the piece, each kind once, in a grid. Gets: joinery (widthMm: of a cell; columns; pages of
     rows of joints: anchor, title, count, between: all pairs of marks; marks as they are told: groups (mark, partners: mark and times), more: pairs left out; lines: what is cut (mark, words);
     cut and fit: runs of steps; drawing: a drawing's place); shownMarks: those that have a drawing. Heights are
     those that JoineryPages counts with. -->
<#import "/frame/macros.ftl" as frame>
<#macro mark of><#if shownMarks?seq_contains(of)><a href="#part-${of}">${of}</a><#else>${of}</#if></#macro>
<#list joinery.pages as rows>
<div class="section">
<@frame.head say('joinery.title')/>
<#if rows?is_first><@frame.title 'joinery' say('joinery.title')/>
<p class="joint-lead">${say('joinery.lead')}</p>
</#if>
<table class="joints">
<#list rows as row><tr>
<#list row as joint><td class="joint<#if joint?index == joinery.columns - 1> end</#if>" style="width: ${joinery.widthMm}mm">
<div class="joint-title" id="${joint.anchor}">${joint.title}</div>
<p class="joint-text">${say('joinery.times', joint.count)} <#list joint.marks.groups as group><#list group.partners as partner><span class="kept-together"><#if partner?is_first><@mark group.mark/> – </#if><@mark partner.mark/><#if joint.between?size gt 1 && partner.times?has_content> (${partner.times})</#if><#if partner?has_next || group?has_next>,</#if></span><#sep> </#list><#sep> </#list><#if joint.marks.more gt 0> ${say('joinery.more', joint.marks.more)}</#if></p>
<@frame.drawing joint.drawing/>
<#list joint.lines as line><p class="joint-text"><b>${line.mark}</b> ${line.words}</p>
</#list>
<p class="joint-text joint-steps"><#if joint.cut.runs?has_content>${say(joint.cut.isOne()?then('joinery.cut', 'joinery.cut.many'))} <@frame.steps joint.cut/>. </#if><#if joint.fit.runs?has_content>${say(joint.fit.isOne()?then('joinery.fit', 'joinery.fit.many'))} <@frame.steps joint.fit/>.</#if></p>
</td></#list>
<#list row?size..<joinery.columns as missing><td class="joint<#if missing == joinery.columns - 1> end</#if>" style="width: ${joinery.widthMm}mm"></td></#list>
</tr></#list>
</table>
</div>
</#list>
