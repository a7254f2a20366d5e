<#-- The language's reference as one HTML page that needs no other file.
     Gets: chapters (lines by name), kinds, joints, cuts (each: id, name, summary, places, keys,
     example), verbs, subAssemblies (each: name, about, groups, text). -->
<#macro words text><#list text?split("`") as piece><#if piece?item_parity == "even"><code>${piece}</code><#else>${piece}</#if></#list></#macro>
<#macro lines all>
<pre><#list all as line>${line.code}<#if line.remark?has_content><i>${line.remark}</i></#if>
</#list></pre>
</#macro>
<#macro keys kind>
<table class="keys">
<thead><tr><th>Key</th><th>What it is</th><th>Write</th><th>If left out</th><th>Example</th></tr></thead>
<tbody>
<#list kind.keys as key>
<tr>
<td class="key"><code>${key.name}</code></td>
<td>${key.help}</td>
<td><#if key.link?has_content><a href="#${key.link}"><@words key.meaning/></a><#else><@words key.meaning/></#if></td>
<td><#if key.required><b>must be there</b><#elseif key.inch?has_content><code>${key.inch}</code><#if key.mm != key.inch>, in a project in mm <code>${key.mm}</code></#if><#else><span class="quiet">nothing</span></#if></td>
<td><#if key.example?has_content && !key.link?has_content><code>${key.example}</code></#if></td>
</tr>
</#list>
</tbody>
</table>
</#macro>
<#macro place kind>
<#list kind.places as place>
<p class="quiet"><#if place.form == "named">Stands under <code>${place.key}:</code> in <a href="#${place.ownerId}">${place.owner}</a>, each under a name of your own.<#elseif place.form == "listed">Stands in the list under <code>${place.key}:</code> in <a href="#${place.ownerId}">${place.owner}</a>, each on a line that begins with a dash.<#else>Stands under <code>${place.key}:</code> in <a href="#${place.ownerId}">${place.owner}</a>, once.</#if></p>
</#list>
</#macro>
<#macro entry kind level="h2">
<section id="${kind.id}">
<${level}>${kind.name}</${level}>
<p class="lead">${kind.summary}</p>
<@place kind/>
<@lines kind.example/>
<@keys kind/>
</section>
</#macro>
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Storyrod: how to describe a piece of furniture</title>
<style>
<#include "style.css">
</style>
</head>
<body>
<nav>
<p class="name">Storyrod</p>
<ol>
<li><a href="#built">How a description is built</a></li>
<li><a href="#lengths">Lengths</a></li>
<li><a href="#formulas">Formulas</a></li>
<li><a href="#places">Where parts are</a></li>
<li><a href="#messages">When something is wrong</a></li>
</ol>
<p class="group">Sections</p>
<ul><#list kinds as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
<p class="group"><a href="#joints">Joints</a></p>
<ul><#list joints as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
<p class="group"><a href="#cuts">Cuts</a></p>
<ul><#list cuts as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
<#if subAssemblies?has_content>
<p class="group"><a href="#sub-assemblies">Sub-assemblies</a></p>
<ul><#list subAssemblies as page><li><a href="#use-${page.name}">${page.name}</a></li></#list></ul>
</#if>
</nav>
<main>
<h1>How to describe a piece of furniture</h1>
<p class="lead">One text says what a piece is made of; the tool works out every size, drawing, list and step from it.</p>

<section id="built">
<h2>How a description is built</h2>
<p>A description is a text file in YAML: a key, a colon, a space, and a value. What belongs together is indented by spaces, never by tabs. Short entries fit on one line between braces, with commas between them. A <code>#</code> behind a space begins a remark. This is a whole project:</p>
<@lines chapters["whole"]/>
<p>Save it as <code>project.yaml</code> in a folder, and run <code>storyrod build</code> with the folder's name. <code>storyrod start</code> writes such a file for you to change.</p>
<p>Names of sizes, stocks, parts and items are your own: lower-case words joined by hyphens, such as <code>left-side</code>. A text that holds a comma, a colon or a number sign is put in quotes. The order of the sections does not matter.</p>
</section>

<section id="lengths">
<h2>Lengths</h2>
<p>Lengths are written as on a shop drawing. A number without a unit is in the project's unit, which <code>units</code> names: <code>inch</code> or <code>mm</code>.</p>
<@lines chapters["lengths"]/>
<table class="keys units">
<thead><tr><th>Unit</th><th>Written</th></tr></thead>
<tbody>
<tr><td>millimetre</td><td><code>mm</code></td></tr>
<tr><td>centimetre</td><td><code>cm</code></td></tr>
<tr><td>metre</td><td><code>m</code></td></tr>
<tr><td>inch</td><td><code>in</code>, <code>inch</code> or <code>"</code></td></tr>
<tr><td>foot</td><td><code>ft</code> or <code>'</code></td></tr>
</tbody>
</table>
<p>Units can be mixed. Lengths are exact; only print is rounded.</p>
<@lines chapters["mixed"]/>
</section>

<section id="formulas">
<h2>Formulas</h2>
<p>Wherever a length or a number is asked for, a formula may stand: <code>+ - * /</code>, parentheses, <code>min</code> and <code>max</code>, with names of sizes and numbers in it. Plus and minus stand between spaces, since a hyphen may belong to a name. A length times a length is no length, and the tool says so; a length divided by a length is a number. Names can be used before the line that gives them a value.</p>
<@lines chapters["formulas"]/>
</section>

<section id="places">
<h2>Where parts are</h2>
<p>All parts stand in one frame: <b>x</b> runs from left to right, <b>y</b> from front to back, <b>z</b> upwards. A part says on each axis from where to where it runs. Every part has the faces <code>left</code>, <code>right</code>, <code>front</code>, <code>back</code>, <code>bottom</code> and <code>top</code>, and a face is a place that others can start from: <code>side.right</code> is the x at which the side ends. A part of an assembly is reached through its name: <code>frame.left-stile.right</code>.</p>
<@lines chapters["places"]/>
<p>On one axis, and no other, a part is as thick as its stock. <code>grain</code> names the axis of its length. Parts end shoulder to shoulder: a joint adds what goes into the other part by itself.</p>
</section>

<section id="messages">
<h2>When something is wrong</h2>
<p>Each message names the file, the line and the column, shows the line with a mark under the very place, and says what to do. An <b>error</b> stops the plan set: nothing is written, and an earlier plan set stays as it was. A <b>warning</b> can be built and will disappoint. <b>Advice</b> may be worth following. <code>storyrod check</code> only says what it finds; <code>storyrod schema</code> prints a schema with which an editor completes keys as you write.</p>
</section>

<#list kinds as kind><@entry kind/></#list>

<section id="joints">
<h2>Joints</h2>
<p class="lead">What connects two parts: it lengthens one, cuts the other, and brings its screws and glue.</p>
<p>Under <code>joints:</code>, in a project or in an assembly, each joint is a line that begins with a dash and its kind.</p>
</section>
<#list joints as kind><@entry kind "h3"/></#list>

<section id="cuts">
<h2>Cuts</h2>
<p class="lead">Machining on a part that no joint asks for.</p>
<p>Under <code>cuts:</code>, in a project or in an assembly, each cut is a line that begins with a dash and its kind.</p>
</section>
<#list cuts as kind><@entry kind "h3"/></#list>

<#if subAssemblies?has_content>
<section id="sub-assemblies">
<h2>Sub-assemblies</h2>
<p class="lead">Descriptions that come with the tool, to be used in yours, or to be copied and changed.</p>
</section>
<#list subAssemblies as page>
<section id="use-${page.name}">
<h3>${page.name}</h3>
<p class="lead">${page.about}</p>
<#list page.groups as group>
<table class="keys">
<thead><tr><th><code>${group.section}</code></th><th>As it comes</th><th>What it is</th></tr></thead>
<tbody>
<#list group.settings as setting>
<tr><td class="key"><code>${setting.name}</code></td><td><#if setting.value?has_content><code>${setting.value}</code></#if></td><td>${setting.remark}</td></tr>
</#list>
</tbody>
</table>
</#list>
<details><summary>Its text</summary>
<@lines page.text/>
</details>
</section>
</#list>
</#if>
</main>
</body>
</html>
