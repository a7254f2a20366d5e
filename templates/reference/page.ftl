<#-- The language's reference as one HTML page that needs no other file.
     Gets: chapters (lines by name), kinds, joints, cuts (each: id, name, summary, places, keys,
     example), verbs, tradeItems (by kind: name, title), woods, sheets (names), subAssemblies (each: name, about, groups, text). -->
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
<li><a href="#using">Sub-assemblies</a></li>
<li><a href="#conditions">Conditions and choices</a></li>
<li><a href="#repeats">Repeats</a></li>
<li><a href="#options">Options</a></li>
<li><a href="#files">Shared files</a></li>
<li><a href="#known">Hardware and woods that are known</a></li>
<li><a href="#messages">When something is wrong</a></li>
</ol>
<p class="group">Sections</p>
<ul><#list kinds as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
<p class="group"><a href="#joints">Joints</a></p>
<ul><#list joints as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
<p class="group"><a href="#shapes">Shapes</a></p>
<ul><#list shapes as kind><li><a href="#${kind.id}">${kind.name}</a></li></#list></ul>
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
<p>Wherever a length or a number is asked for, a formula may stand: <code>+ - * /</code>, parentheses, <code>min</code> and <code>max</code>, and <code>round-up</code>, which makes a number whole, and <code>printable</code>, which gives the largest length, not above, that the plan set prints exactly (after <code>fraction</code>, or in tenths of a millimetre), with names of sizes and numbers in it. Plus and minus stand between spaces, since a hyphen may belong to a name. A length times a length is no length, and the tool says so; a length divided by a length is a number. Names can be used before the line that gives them a value.</p>
<@lines chapters["formulas"]/>
</section>

<section id="places">
<h2>Where parts are</h2>
<p>All parts stand in one frame: <b>x</b> runs from left to right, <b>y</b> from front to back, <b>z</b> upwards. A part says on each axis from where to where it runs. Every part has the faces <code>left</code>, <code>right</code>, <code>front</code>, <code>back</code>, <code>bottom</code> and <code>top</code>, and a face is a place that others can start from: <code>side.right</code> is the x at which the side ends. A part of an assembly is reached through its name: <code>frame.left-stile.right</code>.</p>
<@lines chapters["places"]/>
<p>The floor is at z = 0. What hangs on the wall begins at its height over the floor, such as <code>z: 54 to 84</code>; then it is not taken for a piece that can tip over.</p>
<p>On one axis, and no other, a part is as thick as its stock. <code>grain</code> names the axis of its length. Parts end shoulder to shoulder: a joint adds what goes into the other part by itself.</p>
</section>

<section id="using">
<h2>Sub-assemblies</h2>
<p>What is built before it is fitted, a drawer or a frame, is an <a href="#assembly">assembly</a>: its parts are written below it, or it uses a description of its own. Such a description is a project like any other, in its own frame, which starts at 0 on each axis. This one is the file <code>tray.yaml</code>:</p>
<@lines chapters["tray"]/>
<p>Another project uses it, as often as it likes:</p>
<@lines chapters["use"]/>
<p><code>use</code> names a file beside the project, or in the folder <code>storyrod</code> in your home, or, by a bare name, <#if subAssemblies?has_content><a href="#sub-assemblies">one that comes with the tool</a><#else>one that comes with the tool</#if>. <code>in</code> says where it lies. On each axis either a place, where it begins, or a range: then it also gets that extent, as its size <code>width</code> on x, <code>depth</code> on y, <code>height</code> on z. An axis that is left out starts at 0.</p>
<p><code>with</code> gives it other sizes and numbers, another word of a choice, a stock or an item of yours for one of its own, and the parts it is joined to: <code>meets</code> gives such parts a name inside. What names a neighbour that it is not given is left out. <code>limits</code> say which sizes make no sense.</p>
<p>From outside, <code>tray.base.back</code> is a face of its part <code>base</code>, and <code>tray.left</code> one of the whole. Its parts can be joined, cut and fitted like those of the project: <code>tray.left-side</code>. <code>turn</code> turns it by quarter turns, <code>mirror: x</code> makes it its mirror image left to right; faces, ranges and grain follow. With <code>unit: no</code> it is only a way to write: its parts are built with those around it.</p>
<p>What it says under <code>build</code> comes along: each copy is put together in that order, equal ones side by side, and its wood is worked with the rest of the piece. What an order of the piece names goes by that order instead. Trying and putting on the finish is left to the piece.</p>
</section>

<section id="conditions">
<h2>Conditions and choices</h2>
<p><code>choices</code> are words of which one holds: the first, unless <code>with</code> or an option takes another. A <code>when</code> on a part, an assembly, a joint, a cut, a piece of hardware or a limit says on what condition it is there. A formula can take one of two values: <code>14 when back = rail else 16</code>, in parentheses where it is part of a longer one.</p>
<@lines chapters["conditions"]/>
<p>Values are compared by <code>&lt;</code>, <code>&gt;</code>, <code>&lt;=</code>, <code>&gt;=</code> and <code>=</code>, and joined by <code>and</code>, <code>or</code> and <code>not</code>. What names a part that is left out is left out with it. Conditions and counts are settled before the parts have their places, so they may use sizes, numbers, choices, the thickness of a stock and the sizes of an item, but no faces.</p>
</section>

<section id="repeats">
<h2>Repeats</h2>
<p>A part or an assembly with a <a href="#repeat"><code>repeat</code></a> is there as often as its <code>count</code> says, which may be none. Inside it <code>each.bottom</code> and <code>each.top</code>, or <code>left</code> and <code>right</code>, <code>front</code> and <code>back</code>, are the ends of its own share of the space, and <code>nth</code> is its number.</p>
<@lines chapters["repeats"]/>
<p>The parts are then <code>shelf-1</code>, <code>shelf-2</code> and so on. A joint, a cut or a line of hardware that names <code>shelf</code> stands once for each of them. Where it names two that are repeated as often, they go in pairs. <code>before</code> and <code>after</code> in it are the neighbours in the row; the one without such a neighbour goes without.</p>
<@lines chapters["boards"]/>
<p>What is repeated between walls can name them with <code>beside</code>: each gets the part at its own place in the list, as the <a href="#repeat">bays here</a> do.</p>
</section>

<section id="options">
<h2>Options</h2>
<p>An <a href="#option">option</a> is another version of the same piece: other sizes, numbers, words, stock or items. A stock or an item with a <code>kind</code> is replaced as a whole, one without is changed in the keys that are named. <code>storyrod build PROJECT --option NAME</code> makes the plan set of one, and <code>storyrod compare PROJECT</code> shows the piece as written and all its options side by side: wood, cost, weight, working time, and what was found.</p>
</section>

<section id="files">
<h2>Shared files</h2>
<p>What several projects share is written once. A project can take its shop and further items of hardware from files:</p>
<@lines chapters["shared"]/>
<p><code>shop.yaml</code>, beside the project or in the folder <code>storyrod</code> in your home:</p>
<@lines chapters["shop"]/>
<p><code>hardware.yaml</code> there:</p>
<@lines chapters["hardware"]/>
<p>An item of the project itself comes before one of the same name in a file. Items in common trade sizes, such as screws and slides, <a href="#known">come with the tool</a> and need no line at all.</p>
</section>

<section id="known">
<h2>Hardware and woods that are known</h2>
<p>These items come with the tool: write the name wherever an item is asked for. They have no price and no pack; an item of your own with the same name comes before them.</p>
<table class="keys">
<thead><tr><th>Kind</th><th>Names</th></tr></thead>
<tbody>
<#list tradeItems as kind, items>
<tr><td class="key"><code>${kind}</code></td><td><#list items as item><code title="${item.title}">${item.name}</code><#sep>, </#list></td></tr>
</#list>
</tbody>
</table>
<p>Numbers in a name are joined by hyphens: <code>wood-screw-8-1-1-4</code> is a #8 x 1 1/4 in, <code>wood-screw-3-5-by-16-mm</code> a 3.5 x 16 mm.</p>
<p>Weight, movement and stiffness are known of these woods, in either order of the words, such as <code>"oak, white"</code> or <code>white oak</code>, and without or by what stands in parentheses, such as <code>hard maple</code>: <#list woods as wood><code>${wood}</code><#sep>; </#list>. Of these sheets too: <#list sheets as sheet><code>${sheet}</code><#sep>, </#list>. Any other may be used; give its <a href="#stock"><code>density</code>, <code>movement</code> and <code>modulus</code></a> where you know them.</p>
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

<section id="shapes">
<h2>Shapes</h2>
<p class="lead">Outlines that are no plain rectangle: arcs, rounded corners, or any path.</p>
<p>Under <code>outline:</code> in a <a href="#part">part</a>, each shape is a line that begins with a dash and its kind. A part is first the box that its ranges give; shapes take away from its outline, the face that is not as thick as its stock, and never reach past it.</p>
</section>
<#list shapes as kind><@entry kind "h3"/></#list>

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
<p>Their sizes are in inches, in a project in mm too: a groove of <code>3/8</code> is then printed as 9.5 mm. Give round sizes of your own by <code>with</code>, such as <code>groove: 10</code>; a bare number there is in the unit of your project.</p>
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
