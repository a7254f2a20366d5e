<#-- The exploded view with its parts list, and those of the sub-assemblies. Gets: exploded (a drawing's place);
     explodedHardware, none or one that shows the hardware; hardware.rows (mark, item, count);
     partsList.rows (mark, part, count); openedLead, the key of what is said of them; opened, pages of views (title, lead or empty, drawing: its place);
     explodedKey and, for each page of views, openedKeys: what marks of hardware mean (as hardware.rows). -->
<#import "/frame/macros.ftl" as frame>
<#macro key rows><table class="columns parts-list"><tr>
<#local height = (rows?size / 2)?ceiling>
<#list rows?chunk(height) as column><td class="half<#if column?index == 1> end</#if>">
<table class="side-list">
<#list column as row><tr><td class="mark"><#if hardware.rows?filter(listed -> listed.mark == row.mark)?has_content><a href="#hardware-${row.mark}">${row.mark}</a><#else>${row.mark}</#if></td><td>${row.item}</td><td class="figure"><#if row.count gt 0>${row.count}<#else>${say('exploded.counted')}</#if></td></tr></#list>
</table></td>
</#list>
<#if rows?size == 1><td class="half end"></td></#if>
</tr></table></#macro>
<#-- A list longer than a page goes on in blocks that stay whole: three columns of so many rows. -->
<#assign longList = 60>
<#assign longRows = 5>
<#macro partsColumns rows><table class="columns parts-list<#if rows?size lt partsList.rows?size> run-on</#if>"><tr>
<#local height = (rows?size / 3)?ceiling>
<#list rows?chunk(height) as column><td class="column<#if column?index == 2> end</#if>">
<table class="side-list">
<#list column as row><tr><td class="mark"><#if shownMarks?seq_contains(row.mark)><a href="#part-${row.mark}">${row.mark}</a><#else>${row.mark}</#if></td><td>${row.part}</td><td class="figure">${row.count}</td></tr></#list>
</table></td>
</#list>
<#list (rows?size / height)?ceiling..<3 as missing><td class="column<#if missing == 2> end</#if>"></td></#list>
</tr></table></#macro>
<div class="section" id="exploded">
<@frame.head say('exploded.title')/>
<h1>${say('exploded.title')}</h1>
<#if opened?has_content><p class="quiet">${say(openedLead, '|')?keep_before('|')}<a href="#exploded-opened" class="target"></a>${say(openedLead, '|')?keep_after('|')}</p></#if>
<div class="picture"><@frame.drawing exploded/></div>
<#if partsList.rows?size gt longList><#list partsList.rows?chunk(3 * longRows) as block><@partsColumns block/></#list><#else><@partsColumns partsList.rows/></#if>
<#if explodedKey?has_content><@key explodedKey/></#if>
</div>
<#list explodedHardware as drawing>
<div class="section">
<@frame.head say('exploded.title')/>
<h1>${say('exploded.hardware')}</h1>
<div class="picture"><@frame.drawing drawing/></div>
<@key hardware.rows/>
</div>
</#list>
<#list opened as page>
<div class="section"<#if page?is_first> id="exploded-opened"</#if>>
<@frame.head say('exploded.title')/>
<#list page as view>
<div class="part">
<div class="part-title">${view.title}</div>
<#if view.lead?has_content><p class="part-lead">${view.lead}</p></#if>
<div class="picture"><@frame.drawing view.drawing/></div>
</div>
</#list>
<#if openedKeys[page?index]?has_content><@key openedKeys[page?index]/></#if>
</div>
</#list>
