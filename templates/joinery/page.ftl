<#-- The joints of the piece, each kind once, in a grid. Gets: joinery (widthMm: of a cell; columns; pages of
     rows of joints: anchor, title, count, between: marks (first, second, count); lines: what is cut (mark, words);
     cut and fit: runs of steps; drawing: a drawing's place); shownMarks: those that have a drawing. Heights are
     those that JoineryPages counts with. -->
<#import "/frame/macros.ftl" as frame>
<#macro mark of><#if shownMarks?seq_contains(of)><a href="#part-${of}">${of}</a><#else>${of}</#if></#macro>
<#list joinery.pages as rows>
<div class="section"<#if rows?is_first> id="joinery"</#if>>
<@frame.head say('joinery.title')/>
<p class="joint-lead">${say('joinery.lead')}</p>
<table class="joints">
<#list rows as row><tr>
<#list row as joint><td class="joint<#if joint?index == joinery.columns - 1> end</#if>" style="width: ${joinery.widthMm}mm">
<div class="joint-title" id="${joint.anchor}">${joint.title}</div>
<p class="joint-text">${say('joinery.times', joint.count)} <#list joint.between as pair><span class="kept-together"><@mark pair.first/> – <@mark pair.second/><#if joint.between?size gt 1> (${pair.count})</#if><#sep>,</#sep></span><#sep> </#list></p>
<@frame.drawing joint.drawing/>
<#list joint.lines as line><p class="joint-text"><b>${line.mark}</b> ${line.words}</p>
</#list>
<p class="joint-text joint-steps"><#if joint.cut.runs?has_content>${say('joinery.cut')} <@frame.steps joint.cut/>. </#if><#if joint.fit.runs?has_content>${say('joinery.fit')} <@frame.steps joint.fit/>.</#if></p>
</td></#list>
<#list row?size..<joinery.columns as missing><td class="joint<#if missing == joinery.columns - 1> end</#if>" style="width: ${joinery.widthMm}mm"></td></#list>
</tr></#list>
</table>
</div>
</#list>
