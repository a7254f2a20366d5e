<#ftl output_format="plainText">
<#--
  The words of one step. Lines that start with "# " are the title, with "! " a caution, with "- " one
  sentence each, with "@ " the key of a tool that a sentence takes up besides those of its trade.
  What comes in: the values that StepWriter names. Only this file turns them into English.
-->
<#-- A size or a remark behind a name stays as it is: oak pegs 1/4 in, butt hinges, brass. -->
<#function plural noun>
  <#local sized = noun?matches("^(\\S.*?)((?:, | #?\\d).*)$")>
  <#if sized><#return pluralWord(sized?groups[1]) + sized?groups[2]></#if>
  <#return pluralWord(noun)>
</#function>
<#function pluralWord noun>
  <#local n = noun>
  <#if n?ends_with("foot")><#return n?remove_ending("foot") + "feet"></#if>
  <#if n?ends_with("shelf")><#return n?remove_ending("shelf") + "shelves"></#if>
  <#if n?matches(".*[^aeiou]y")><#return n?remove_ending("y") + "ies"></#if>
  <#if n?matches(".*(s|x|ch|sh)")><#return n + "es"></#if>
  <#return n + "s">
</#function>
<#-- Numbers up to twelve in words, above in figures. -->
<#assign numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"]>
<#function number count><#return (count < numbers?size)?then(numbers[count], count?string)></#function>
<#function joined list>
  <#if list?size == 0><#return ""></#if>
  <#if list?size == 1><#return list[0]></#if>
  <#return list[0..list?size - 2]?join(", ") + " and " + list?last>
</#function>
<#function place p><#return p.places?map(each -> words["place." + each])?join(" ")></#function>
<#-- Numbers as one reads them: 1 to 3, 1 and 2, 1, 2 and 5. -->
<#function counted p>
  <#local all = p.numbers>
  <#if all?size gt 2 && all?last - all?first == all?size - 1><#return all?first + " to " + all?last></#if>
  <#return joined(all?map(n -> n?string))>
</#function>
<#function placed p noun><#return (place(p) + " " + noun)?trim></#function>
<#-- A part in a title: the left side, the feet, drawer 2, drawers 1 to 3. -->
<#function plain p>
  <#if p.numbers?size gt 0 && !p.numbers?seq_contains(0)>
    <#return ((p.count gt 1)?then(plural(p.title?uncap_first), p.title?uncap_first)) + " " + counted(p)>
  </#if>
  <#if p.count gt 1><#return "the " + placed(p, plural(p.title?uncap_first))></#if>
  <#if p.title?matches(".* \\d+")><#return (place(p) + " " + p.title?uncap_first)?trim></#if>
  <#return "the " + placed(p, p.title?uncap_first)>
</#function>
<#-- A part in a sentence, with its mark: the left side (A), the two partitions (C). -->
<#function full p>
  <#local mark = (p.mark == "")?then("", " (" + p.mark + ")")>
  <#if p.count gt 1 && p.numbers?size == 0><#return "the " + number(p.count) + " " + placed(p, plural(p.title?uncap_first)) + mark></#if>
  <#return plain(p) + mark>
</#function>
<#-- What goes by one name in two sizes is named once: the drawer fronts. -->
<#function plains list>
  <#local names = []>
  <#list list as p>
    <#local name = (list?filter(other -> plain(other) == plain(p))?size gt 1 && p.numbers?size == 0)?then(plain(p + {"count": 2}), plain(p))>
    <#if !names?seq_contains(name)><#local names = names + [name]></#if>
  </#list>
  <#return joined(names)>
</#function>
<#-- What differs in size only goes together by one name with all its marks: the two box fronts (L and R). -->
<#function sameName p other><#return p.title == other.title && place(p) == place(other) && p.numbers?size == 0 && other.numbers?size == 0></#function>
<#function merged list>
  <#local all = []>
  <#list list as p>
    <#local like = list?filter(other -> sameName(p, other))>
    <#if like?size lt 2><#local all = all + [p]>
    <#elseif list[0..<p?index]?filter(other -> sameName(p, other))?size == 0><#local all = all + [p + {"count": total(like), "mark": joined(like?map(each -> each.mark)?filter(mark -> mark != ""))}]></#if>
  </#list>
  <#return all>
</#function>
<#function fulls list><#return joined(merged(list)?map(p -> full(p)))></#function>
<#-- All parts of the step by their marks: A × 2, B and C. -->
<#function letters>
  <#return joined(marks?map(p -> p.mark + ((p.count gt 1)?then(" × " + p.count, ""))))>
</#function>
<#function total list><#local sum = 0><#list list as p><#local sum = sum + p.count></#list><#return sum></#function>
<#function pick list one many><#return (total(list) == 1)?then(one, many)></#function>
<#-- A length of common practice: in the unit that comes first, the other beside it where both are told. -->
<#function usual inches millimetres>
  <#local first = inch?then(inches, millimetres)>
  <#return first + both?then(" [" + inch?then(millimetres, inches) + "]", "")>
</#function>
<#function has trait><#return traits?seq_contains(trait)></#function>
<#function many noun count><#return (count == 1)?then(noun, plural(noun))></#function>
<#-- What is built more than once is told before what is done to it: Drawer 2: glue the box front. -->
<#macro title text># ${(inUnits?size == 1 && !has("fit-front"))?then(plains(inUnits)?remove_beginning("the ")?cap_first + ": " + text?uncap_first, text?cap_first)}
</#macro>
<#macro say text>- ${text?cap_first}
</#macro>
<#macro with tool>@ ${tool}
</#macro>
<#-- A title names up to two kinds of part, and of more how many there are. -->
<#function someParts>
  <#local names = merged(parts?map(p -> p + {"numbers": []}))>
  <#if names?size lte 2><#return plains(names)></#if>
  <#local rest = total(names[2..])>
  <#return names[0..1]?map(p -> plain(p))?join(", ") + " and " + number(rest) + " more " + many("part", rest)>
</#function>
<#function inParts><#return " in " + someParts()></#function>
<#function ofParts><#return " of " + someParts()></#function>
<#function onParts><#return inParts()?replace(" in ", " on ", "f")></#function>
<#function lettersOf list><#return joined(list?map(p -> p.mark + ((p.count gt 1 || p.counted!false)?then(" × " + p.count, ""))))></#function>

<#-- A wood as it is asked for. -->
<#function woodOf s><#return s.quarter?then("quarter-sawn ", "") + s.material></#function>

<#-- Boards of several woods: as they are bought, and what becomes of them, for two may be bought alike. -->
<#function stuffOf s>
  <#if !s.bought?has_content><#return woodOf(s) + " " + s.thick></#if>
  <#return "rough " + s.bought + " " + woodOf(s) + s.layers?then(" to be glued up in layers", ", " + s.thick + " when planed")>
</#function>

<#macro choosing>
  <#assign solids = stocks?filter(s -> !s.sheet)>
  <#assign sheets = stocks?filter(s -> s.sheet)>
  <@title "Choose the " + (solids?size == 0)?then("sheets", (sheets?size == 0)?then("boards", "boards and the sheets"))/>
  <#if solids?size gt 0>
    <@say "Choose straight, dry boards, lay them all out side by side, and chalk round cracks, loose knots, sapwood and crooked places: no part may come from there."/>
    <#list solids as s>
      <#if s.laidOut>
        <@say "For " + stuffOf(s) + ", take " + (s.onHand?size gt 0)?then("what is on hand (" + joined(s.onHand) + ") first, and ", "") + "the boards as the layouts show: " + lettersOf(s.marks) + "." + s.flawed?then(" See that their bad places still lie where the layouts show them.", "")/>
      <#else>
        <@say "For " + stuffOf(s) + ", find room for the longest rough lengths first: " + s.longest?map(l -> joined(l.blanks?map(b -> b.together?then(lettersOf(b.marks) + " in one", b.mark))) + " (" + l.length + ")")?join(", then ") + (s.others?then("; the shorter ones go beside them and into what is left", "")) + "."/>
      </#if>
    </#list>
    <#if seen?size gt 0>
      <@say "Keep the clearest wood, with the calmest grain, for what looks to the front or up: " + lettersOf(seen) + "."/>
    </#if>
  </#if>
  <#list matches as m>
    <@say "Take " + fulls(m.parts) + " from one " + m.sheet?then("sheet", "board") + m.inRow?then(m.endToEnd?then(", one behind the other,", ", beside each other,") + " in the order in which they will be seen, so that the grain runs on over them", ", so that grain and colour agree") + "."/>
  </#list>
  <#if sheets?size == 1>
    <#local s = sheets[0]>
    <@say "Measure the " + s.material + " of " + s.thick + " with calipers at several places of its edges: the slots are made for " + s.thick + "."/>
    <@say "If it differs by more than a sheet of paper or two, set the cutters of its slots by an offcut, not by the figure."/>
  <#elseif sheets?size gt 1>
    <#local some = []>
    <#list sheets as s><#local some = some + [s.material + " of " + s.thick]></#list>
    <@say "Measure the sheets with calipers at several places of their edges: the slots are made for " + joined(some) + "."/>
    <@say "Where a sheet differs from that by more than a sheet of paper or two, set the cutters of its slots by an offcut, not by the figure."/>
  </#if>
  <@say "Chalk the marks on the " + (solids?size == 0)?then("sheets", (sheets?size == 0)?then("boards", "boards and sheets")) + " where the parts will come from, with an arrow along the grain."/>
</#macro>

<#assign facesWay = {"front": "to the front", "back": "to the back", "top": "up", "bottom": "down", "left": "to the left", "right": "to the right"}>

<#function laidOutSides>
  <#local sides = []>
  <#list laidOut as l><#list l.edges as e><#if !sides?seq_contains(e.side)><#local sides = sides + [e.side]></#if></#list></#list>
  <#return ["edge", "end", "face"]?filter(side -> sides?seq_contains(side))?join(" or ")?replace("edge or end or", "edge, end or")>
</#function>
<#function facingOf f><#return joined(f.marks?map(m -> lettersOf([m])) + f.onSide?map(m -> "the " + words["place." + f.way] + " " + lettersOf([m])) + f.parts?map(p -> full(p)))></#function>
<#macro markingParts>
  <@title "Mark face and edge" + ofParts()/>
  <#assign open = facing?filter(f -> !f.setOut && facesWay[f.way]??)>
  <#if open?size gt 0>
    <@say ((marks?size == 1 && total(marks) == 1)?then("Turn its better face so that it is seen", "Turn the better face of each so that it is seen")) + ", and put the face mark on it: " + open?map(f -> facingOf(f) + " " + facesWay[f.way])?join("; ") + "."/>
  </#if>
  <#list facingDrawn as d>
    <@say (open?size gt 0)?then("Put that of ", "Put the face mark of ") + lettersOf(d.marks) + " on the " + words["edge." + d.face] + " face as drawn: each is turned in its place."/>
  </#list>
  <#list facing?filter(f -> f.setOut) as f>
    <@say "Put the face mark of " + facingOf(f) + " on the " + words["edge." + f.way] + " face: joints are set out from it, and no face is seen from outside."/>
  </#list>
  <#list facing?filter(f -> !f.setOut && !facesWay[f.way]??) as f>
    <@say "Put the face mark of " + facingOf(f) + " on the better face: " + (f.way == "inside")?then("both faces are seen inside the piece.", "no face is seen from outside.")/>
  </#list>
  <@say "Beside it write the letter, with an arrow to the end or edge that the part drawing shows up" + several?then("; where equal parts have places of their own, write the place too, such as front left", "") + "."/>
  <#list handed as h>
    <@say "Lay the parts " + h.mark + " in pairs, face marks up and like edges together: " + number(h.same) + " as drawn and " + number(h.mirrored) + " mirrored. Write left or right on each before anything is cut."/>
  </#list>
  <#if laidOut?size gt 0>
    <@say "Put the edge mark on the " + laidOutSides() + " from which the joints are set out, as the part drawing names it: " + laidOut?map(l -> joined(l.marks) + " on " + joined(l.edges?map(e -> "the " + words["edge." + e.face] + " " + e.side)))?join("; ") + (laidOut?map(l -> l.marks?size)?join("+")?eval != marks?size)?then("; on the others the truest long edge that stays", "") + "."/>
  <#else>
    <@say "Put the edge mark on the truest long edge that stays, beside the face mark."/>
  </#if>
  <#if fromFaceMark?size gt 0>
    <@say "The joints of " + joined(fromFaceMark) + " are set out from the face mark too."/>
  </#if>
  <#list fromOtherFace as o>
    <@say "Put a cross on the " + words["edge." + o.face] + " face of " + joined(o.marks) + " too, opposite the face mark: joints are set out from it."/>
  </#list>
  <@say "Gauge and measure from marked faces and edges only, and keep them against fence and guide."/>
</#macro>

<#-- How the staves of panels are turned. -->
<#macro ringsOfStaves>
  <#if alternated?size gt 0>
        <@say "Turn every second board of " + fulls(alternated) + " over, end for end, so that it still planes the same way, and so that the annual rings at the ends curve up and down in turn: where one board cups, the next cups the other way, and the panel stays flat on the whole."/>
  </#if>
  <#if matched?size gt 0>
    <@say "Turn the boards of " + fulls(matched) + " by their looks, whichever way the annual rings at their ends curve" + quarterSawn?then(": they stand upright in quarter-sawn wood and do not cup it", ". Such a panel may cup in one sweep, so do not leave it lying loose for long") + "."/>
  </#if>
</#macro>

<#-- Short parts stay end to end in one blank. -->
<#function inLengths><#return (longBlanks?size == 0)?then("", " (" + longBlanks?map(b -> b.length)?join(", ") + ")")></#function>
<#macro longBlanksTold>
  <#if longBlanks?size gt 0>
    <@say "The rough length of " + joined(longBlanks?map(b -> lettersOf(b.marks) + " in one is " + b.length)) + "."/>
  </#if>
</#macro>

<#-- Handsaw and bandsaw need neither a flat face nor a straight edge; the caution tells of the table saw. -->
<#macro roughSawing>
  <@with "bandsaw"/>
</#macro>

<#macro laminating>
  <@title "Glue up the layers of " + plains(parts)/>
  <@say "Crosscut, then rip the boards for the layers to the rough sizes in the cut list."/>
  <@roughSawing/>
  <#if short?size gt 0>
    <@say "Leave " + lettersOf(short) + " together in one long blank, also for the glue-up, until they are cut to size: a short piece is not safe in the jointer or the planer."/>
    <@longBlanksTold/>
  </#if>
  <#list layered as it>
    <@say "Make " + full(it.part) + " from " + number(it.count) + " layers" + pick([it.part], "", " each") + ", at least " + it.thick + " thick when planed, better " + it.thicker + ": the glued pack is planed once more" + (it.staves gt 1)?then(", and each layer from " + number(it.staves) + " staves, at least " + it.width + " wide when jointed", "") + "."/>
  </#list>
  <#if layered?filter(it -> it.staves gt 1)?size gt 0>
    <@ringsOfStaves/>
    <@say "Glue the staves of each layer edge to edge first, let the glue dry for " + cured + ", and plane the layer again."/>
  </#if>
  <@say "Flatten one face of each board on the jointer and plane the other parallel to it, all layers of a part to one thickness and on the day of the glue-up: fresh faces hold best."/>
  <@say "Lay the layers on each other with their grain all one way, and turn the outer two with the heart side out: as the wood dries, it then presses the edges of the glue lines together."/>
  <@say "Try them dry in the clamps: no gap may show along an edge."/>
  <@say "Spread an even film of glue over the whole of each face that meets another, set the layers flush along one edge, and clamp them between straight cauls, from the middle to the ends, clamps on both edges in turn."/>
  <@panelClamps usual("4 in", "100 mm")/>
  <@say "Leave " + pick(parts, "it", "them") + " for " + cured + " in all before you plane " + pick(parts, "it", "them") + "; go on with the next steps meanwhile."/>
</#macro>

<#-- How many clamps a panel or a pack of layers takes, and when they come off. -->
<#macro panelClamps spacing>
  <#local long = panelClamped?filter(p -> p.count gt 2)?size gt 0>
  <@say "Set " + joined(panelClamped?map(p -> number(p.count) + (p.count == panelClamped[0].count)?then(" clamps", "") + " for " + (p.shared)?then((p.panels == 1)?then("the long panel of ", "each of the long panels of "), pick(p.parts, "", "each of ")) + fulls(p.parts))) + ": one " + usual("2 in", "50 mm") + " from each end" + long?then(", the rest evenly between them, no more than " + spacing + " apart", "") + "."/>
  <#if clampsShort gt 0>
    <@say "The shop has " + number(shopClamps) + " of them: borrow " + number(clampsShort) + " more before you spread any glue."/>
  </#if>
  <#if panelRounds?size gt 0>
    <@say "The shop has " + number(shopClamps) + " clamps, so glue up in turns: first " + panelRounds?map(r -> fulls(r))?join(", then ") + "; begin the next when the clamps of the one before come off."/>
  <#elseif turns gt 1>
    <@say "Spread glue on " + number(atOnce) + " at a time, for the shop has " + number(shopClamps) + " clamps: begin the next when the clamps of the first come off."/>
  <#elseif panelCount gt 1>
    <@say "Spread the glue on one and clamp it before you spread the next."/>
  </#if>
  <@say "Leave the clamps on for " + clampWait + (turns gt 1)?then(" each time", "") + ", or as long as the glue's label says."/>
</#macro>

<#-- A board too wide for the jointer is flattened by other means before it is planed (common practice). -->
<#macro wideForJointer>
  <#if overJointer?size gt 0>
    <@with "hand-plane"/>
    <@with "shims"/>
    <@say lettersOf(overJointer) + pick(overJointer, " is", " are") + " in the rough wider than " + (jointer == "")?then("a usual jointer of " + usual("6 in", "150 mm"), "your jointer of " + jointer) + ": flatten " + pick(overJointer, "it", "them") + " with a hand plane, or plane " + pick(overJointer, "it", "them") + " on a flat sled, on shims wherever the board would rock; or rip " + pick(overJointer, "it", "each") + ", flatten both halves, and glue them together again."/>
  </#if>
</#macro>

<#macro milling>
  <#if has("mill-layers")>
    <@laminating/>
  <#elseif has("mill-panel")>
    <@title "Glue up the boards for " + plains(parts)/>
    <@say "Lay the boards chosen for " + fulls(parts) + " side by side, and shift them until colour and grain run together; draw a large triangle across them with chalk, so that each finds its place again."/>
    <#list staved as it>
      <@say "Saw " + number(it.count) + " staves for " + pick([it.part], "", "each of ") + full(it.part) + " to the rough size in the cut list; jointed, each must still be at least " + it.width + " wide."/>
    </#list>
    <#if short?size gt 0>
      <@say "Leave the boards of " + lettersOf(short) + " " + (shortTogether?size == 0)?then("longer than the part" + pick(short, "", "s"), "in " + (longBlanks?size == 1)?then("one long panel, end to end", "long panels, those of one width end to end") + (shortAlone?size == 0)?then("", ", those of " + lettersOf(shortAlone) + " longer than the part")) + ", from the jointer to the glue-up and the planer, until " + pick(short, "the part is", "the parts are") + " cut to size: a short piece is not safe in the jointer or the planer."/>
    </#if>
    <#if staved?size lt parts?size>
      <@say "Make " + (staved?size gt 0)?then("the rest", fulls(parts)) + " from boards no wider than your jointer and your planer take, and leave the rough allowance on."/>
    </#if>
    <@roughSawing/>
    <@ringsOfStaves/>
    <@say "Flatten one face of each board on the jointer."/>
    <@wideForJointer/>
    <#if tooWide?size gt 0>
      <@say "Plane the boards for " + fulls(tooWide) + " a little over " + thickness + ", by " + usual("1/32 in", "1 mm") + ": glued up, " + pick(tooWide, "it is", "they are") + " wider than your planer, and the levelling of the seams takes the rest."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say "Plane the " + (tooWide?size gt 0)?then("other ", "") + "boards a little over " + thickness + "."/>
    </#if>
    <@say "Lay the boards in their order again, and draw the triangle anew on the planed faces: planing, and turning boards over, took the first one away."/>
    <@say "Joint the edges that meet, until no light shows between them."/>
    <#list inGroups as it>
      <@say "Glue up " + fulls(it.parts) + " in two goes, not " + number(it.seams) + " seams at once: first groups of " + number(it.each) + " boards, which your planer takes; plane these, joint them anew, and glue them together, with a helper."/>
    </#list>
    <@say "Glue the boards edge to edge on a flat bed of clamps, clamps under and over them in turn."/>
    <@panelClamps usual("12 in", "300 mm")/>
    <@say "Leave the panel" + pick(parts, "", "s") + " for " + cured + " in all before you " + (tooWide?size == 0)?then("plane", (tooWide?size == parts?size)?then("level", "plane or level")) + " " + pick(parts, "it", "them") + "; go on with the next steps meanwhile."/>
  <#else>
    <@title "Mill the " + woodOf(stock) + " to " + thickness/>
    <#assign single = marks?filter(m -> !short?map(s -> s.mark)?seq_contains(m.mark))>
    <#if single?size gt 0>
      <@say "Crosscut, then rip to the rough sizes in the cut list: " + lettersOf(single) + "."/>
    </#if>
    <#if shortTogether?size gt 0>
      <@say "Saw " + lettersOf(shortTogether) + " as " + (longBlanks?size == 1)?then("one long blank, end to end", "long blanks, those of one rough width end to end in one") + inLengths() + ", and leave " + (longBlanks?size == 1)?then("it", "them") + " whole until the parts are cut to size: a short piece is not safe in the jointer or the planer."/>
    </#if>
    <#if shortAlone?size gt 0>
      <@say "Saw " + lettersOf(shortAlone) + " " + pick(shortAlone, "as a longer blank and leave it whole until the part is", "each as a longer blank of its own and leave these whole until the parts are") + " cut to size" + (shortTogether?size == 0)?then(": a short piece is not safe in the jointer or the planer.", ", as these.")/>
    </#if>
    <@roughSawing/>
    <@say "Flatten one face of " + (blanks == 1)?then("the", "each") + " blank on the jointer."/>
    <@wideForJointer/>
    <@say "Joint one edge square to that face."/>
    <@say (blanks == 1)?then("Plane it to " + thickness + ".", "Plane all blanks to " + thickness + " in one setting.")/>
    <@say "Chalk the mark on " + (blanks == 1)?then("it", "each blank") + "."/>
  </#if>
</#macro>

<#macro sizing>
  <#if has("size-kept")><@trimming/><#return></#if>
  <#if has("size-rejoined")><@resizing/><#return></#if>
  <#if has("size-panel") || has("size-large-panel")>
    <@title "Plane " + plains(parts) + " and cut " + pick(parts, "it", "them") + " to size"/>
    <@say "Scrape the squeezed-out glue off " + fulls(parts) + "."/>
    <#if tooWide?size gt 0>
      <@say "Level the seams of " + fulls(tooWide) + " down to " + thickness + " with a hand plane, a wide drum sander, or a router on a sled."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say "Plane " + (tooWide?size gt 0)?then("the rest", pick(parts, "it", "them")) + " to " + thickness + "."/>
    </#if>
    <#if has("size-large-panel")>
      <@with "long-battens"/>
      <@say "Lay " + fulls(largePanels) + " on battens, with a helper to lift and turn " + pick(largePanels, "it", "them") + ": a panel of this size is moved over no machine."/>
      <@say "Saw one long edge straight with the track saw, or trim it with a router along a straightedge; saw the other parallel to it, and both ends square to them, in the same way."/>
    </#if>
    <#if has("size-panel")>
      <@say has("size-large-panel")?then("Of the others, joint ", "Joint ") + "one edge straight, then rip to width with that edge against the fence."/>
      <#if short?size gt 0>
        <@say "Crosscut the long panel of " + lettersOf(short) + " into its parts now, a little over length."/>
      </#if>
      <@say "Square both ends with the crosscut sled."/>
    </#if>
  <#elseif has("size-layers")>
    <@title "Plane " + plains(parts) + " and cut " + pick(parts, "it", "them") + " to size"/>
    <@say "Scrape the squeezed-out glue off " + fulls(parts) + "."/>
    <@say "Flatten one face on the jointer, then joint an edge square to it."/>
    <#if tooWide?size gt 0>
      <@say "Level " + fulls(tooWide) + " to " + thickness + " with a hand plane, a wide drum sander, or a router on a sled."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say "Plane " + (tooWide?size gt 0)?then("the rest", pick(parts, "it", "them")) + " to " + thickness + ", a little off each face in turn, so that the outer layers stay alike."/>
    </#if>
    <@say "Rip to width with the jointed edge against the fence."/>
    <@say "Square one end, then crosscut to length against a stop" + (total(marks) == 1)?then(".", ", so that equal parts come out equal.")/>
  <#elseif has("size-sheet")>
    <@title "Cut the " + stock.thick + " " + stock.material + " to size"/>
    <@say "Follow the numbered cuts of the layout from 1 on: they give " + (total(marks) == 1)?then("the part", "every part") + " its finished size, so nothing is cut twice."/>
    <@say "Make the first cuts, while the pieces are large, with the track saw; lay the sheet flat on supports that carry both sides of the cut."/>
    <@say "Make the rest at the table saw, once you can handle the pieces there: set the fence as the layout says and keep a straight, clean edge against it."/>
    <@say "Where the next cuts have the same fence setting, make them before you move the fence."/>
    <@say "Chalk the mark on " + (total(marks) == 1)?then("the part", "each part") + " as it comes off the saw."/>
  <#else>
    <@title "Cut the " + many("part", total(marks)) + " of " + stock.thick + " " + woodOf(stock) + " to size"/>
    <@say "Rip " + (blanks == 1)?then("the", "each") + " blank to width with its jointed edge against the fence."/>
    <@say "Square one end."/>
    <@say "Crosscut to length against a stop" + (total(marks) == 1)?then(".", ", so that equal parts come out equal.")/>
  </#if>
  <#if has("size-sheet")>
    <@say "Check " + letters() + " against the sizes listed with this step."/>
  <#else>
    <@say "Cut " + letters() + " to the sizes listed with this step."/>
  </#if>
  <#if made?size gt 0>
    <@say "Cut " + fulls(made) + " apart on the sled against a stop, under a hold-down: they are too small to be led along the fence by hand."/>
  </#if>
  <#if has("size-panel") || has("size-large-panel")>
    <@with "tape"/>
    <@say "Measure the two diagonals of " + pick(parts, "it", "each") + " then: both should be as listed with this step."/>
  </#if>
</#macro>

<#-- Boards out of which pieces are cut that are kept: blank, cut apart, glue, size, trim. -->
<#function blanksOf list><#return (list?size == 1 && list[0].count == 1)?then("the blank of ", "the blanks of ")></#function>

<#macro blanking>
  <@title "Cut " + blanksOf(allBoards) + plains(allBoards) + " to size"/>
  <#if has("blank-panel")>
    <@say "Scrape the squeezed-out glue off " + fulls(allBoards) + "."/>
    <#if tooWide?size gt 0>
      <@say "Level the seams of " + fulls(tooWide) + " down to " + thickness + " with a hand plane, a wide drum sander, or a router on a sled."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say "Plane " + (tooWide?size gt 0)?then("the rest", pick(parts, "it", "them")) + " to " + thickness + "."/>
    </#if>
  <#elseif has("blank-sheet")>
    <@say "It comes off its sheet with the other parts, by the numbered cuts of the layout."/>
  </#if>
  <#list boards as b>
    <@say "Cut " + fulls(b.parts) + " to a blank of " + b.blank + ", square at the ends: " + b.wider + " wider than the finished board, which is what the rips take, and no longer."/>
  </#list>
  <@say "Try the blade in an offcut: if its kerf is not the one given, the gaps and the width change with it."/>
</#macro>

<#function numbersOf cuts><#return (cuts?size == 1)?then("cut ", "cuts ") + joined(cuts?map(c -> c.number?string))></#function>
<#function sizesOf cuts><#return joined(cuts?map(c -> c.size + " (" + c.number + ")"))></#function>

<#macro keeping>
  <@title "Cut " + plains(allKept) + " out of " + plains(allBoards)/>
  <#if has("keep-saw")>
    <@say "Draw a large triangle across the whole face of each blank, and number its pieces, so that each finds its old place again."/>
    <#list boards as b>
      <@say "Rip the blank of " + fulls(b.parts) + " right through, as the drawing of the blank shows: strips of " + sizesOf(b.rips) + " come off, and the rest is the last strip."/>
      <@say "Crosscut what holds " + lettersOf(b.keptMarks) + " in the order of the numbers, " + numbersOf(b.crosscuts) + ", against a stop: pieces of " + sizesOf(b.crosscuts) + " come off."/>
      <#list b.openings as o>
        <@say fulls(o.kept) + pick(o.kept, " comes off the saw ", " come off the saw ") + o.offTheTool + ": put " + pick(o.kept, "it", "them") + " aside" + o.trims?then(" to be trimmed later", "") + "."/>
      </#list>
    </#list>
    <@say "Leave all sawn edges as they are: what is planed off them would be missing in the width."/>
  <#elseif has("keep-router")>
    <#list boards as b>
      <@say "Make a template that guides the " + b.bit + " cutter round the middle of its path in " + fulls(b.parts) + "."/>
      <#list b.openings as o>
        <@say "Its path is " + b.bit + " wide all round, inside an opening of " + o.opening + "; " + fulls(o.kept) + pick(o.kept, " is", " are") + " left " + o.finished + "."/>
      </#list>
    </#list>
    <@say "Fix the board and the piece inside to a flat bed, so that neither can move when the last of the wood is cut."/>
    <@say "Rout in passes of " + usual("1/8 in", "3 mm") + " at most, the last one just through into the bed."/>
    <#list boards as b>
      <@say "Square the corners of the opening in " + fulls(b.parts) + " with a chisel; or leave them round, with the cutter's " + b.radius + " or more, and round the corners of " + lettersOf(b.keptMarks) + " to match."/>
    </#list>
  <#else>
    <@say "Cut a trial square in an offcut and measure what the laser takes."/>
    <#list boards as b>
      <@say "Set the path for a kerf of " + b.kerf + " in " + fulls(b.parts) + ": it is the gap all round."/>
      <#list b.openings as o>
        <@say "Cut an opening of " + o.opening + "; " + fulls(o.kept) + pick(o.kept, " is", " are") + " left " + o.finished + "."/>
      </#list>
    </#list>
    <@say "Fix the piece inside so that it cannot tip when it is cut free."/>
  </#if>
  <@say "Write the mark on each piece, and which way up it was."/>
</#macro>

<#macro rejoining>
  <@title "Glue " + plains(allBoards) + " together again"/>
  <@say "Lay strips and pieces on a flat bed of clamps as the triangle shows; the kept piece stays out."/>
  <@say "Put it all together dry: the outer ends lie flush, and the grain runs on across each seam."/>
  <#list boards as b>
    <#list b.openings as o>
      <@say "See that the opening in " + fulls(b.parts) + " is " + o.length + " long: as long as the kept piece with a kerf at each end."/>
    </#list>
  </#list>
  <@with "masking-tape"/>
  <@say "Cut a spacer as long as each opening and wrap it in tape: laid in the opening, it keeps the end pieces where they belong."/>
  <@say "Brush glue on the long edges that meet, and none where the opening will be."/>
  <@say "Clamp across the strips, clamps under and over them in turn, and see with a straightedge that the faces lie level."/>
  <@panelClamps usual("12 in", "300 mm")/>
  <@say "Wipe the glue out of the corners of the opening while it is wet."/>
  <@say "Leave it for " + cured + " in all; go on with the next steps meanwhile."/>
</#macro>

<#macro trimming>
  <@title "Trim " + plains(parts) + " to fit"/>
  <#list boards as b>
    <#list b.openings as o>
      <#if o.trims>
        <@say "Take " + o.gap + " off each long edge of " + fulls(o.kept) + ": from " + o.offTheTool + " to " + o.finished + "."/>
      <#else>
        <@say "Ease the long edges of " + fulls(o.kept) + " until " + pick(o.kept, "it moves freely in its opening", "they move freely in their openings") + "."/>
      </#if>
    </#list>
  </#list>
  <@say "Leave the ends alone: the saw kerf is the gap there."/>
  <@say "Hold it against the board it came from and see that the grain runs through."/>
</#macro>

<#macro resizing>
  <@title "Clean up " + plains(allBoards) + " and bring " + pick(allBoards, "it", "them") + " to size"/>
  <@say "Scrape the glue off both faces and out of the opening."/>
  <@say "Level the seams with a hand plane or a scraper, and take no more than that."/>
  <#list boards as b>
    <@say "Measure " + fulls(b.parts) + " across: the strips together must give " + b.width + "; plane a long edge if it is wider."/>
  </#list>
  <@say "Trim the ends flush if a piece stands out."/>
</#macro>

<#-- Distances, each once, with the edges from which it is measured. -->
<#-- Distances from edges: one for several edges, or several from one edge, are said together. -->
<#function fenced values>
  <#local distances = []>
  <#list values as v><#if !distances?seq_contains(v.value)><#local distances = distances + [v.value]></#if></#list>
  <#local groups = []>
  <#list distances as d>
    <#local sides = []>
    <#list values as v><#local side = words["edge." + v.edge] + " " + v.side><#if v.value == d && !sides?seq_contains(side)><#local sides = sides + [side]></#if></#list>
    <#local from = sides[0] + (sides?size == 1)?then("", ", then from the " + sides[1..]?join(" and the "))>
    <#if groups?size gt 0 && groups?last.from == from>
      <#local groups = groups[0..<groups?size - 1] + [{"from": from, "distances": groups?last.distances + [d]}]>
    <#else>
      <#local groups = groups + [{"from": from, "distances": [d]}]>
    </#if>
  </#list>
  <#local said = groups?map(g -> joined(g.distances) + " from the " + g.from)>
  <#return said?join("")?contains(", then")?then(said?join("; "), joined(said))>
</#function>
<#function asDrawn fence><#return fence.asDrawn?then(", as the part is drawn", "")></#function>
<#-- Where on these lines the holes or slots lie, if there are any. -->
<#function alongLines fence>
  <#local lines = (fence.values?size == 1)?then("it", "these lines")>
  <#if fence.along?size gt 0><#return "; along " + lines + ", " + fenced(fence.along)></#if>
  <#return fence.alongDrawn?then("; where along " + lines + ", the part drawing shows", "")>
</#function>

<#-- Where the lines of laps are cut, so that a stop can be set for them. -->
<#macro stopsSet>
  <#list fences as fence>
    <@say "For " + fulls(fence.parts) + ", set the stop to cut on the waste side of the " + many("line", fence.values?size) + " " + fenced(fence.values) + asDrawn(fence) + "."/>
  </#list>
</#macro>
<#-- On which lines the middles of holes or slots lie. -->
<#macro middles what>
  <#list fences as fence>
    <@say "On " + fulls(fence.parts) + ", the middles of the " + what + " lie " + fenced(fence.values) + asDrawn(fence) + alongLines(fence) + "."/>
  </#list>
</#macro>

<#-- A screw slides along its slot, across the grain of what moves. -->
<#function slotsRun><#return cut.slotsRun?has_content?then(": each runs " + (words["clamp." + cut.slotsRun])!"", "")></#function>

<#-- Where the bearing of a bit would fall into the mouth of a slot. -->
<#macro slotsPlugged>
  <#if crossed.gaps?size gt 0>
    <@say "Where a slot opens into such an edge of " + fulls(crossed.gaps) + ", push a scrap into its mouth, flush with the face, first: the bearing would dip into it."/>
  </#if>
</#macro>
<#-- A shaped edge must not run into the joint in which its end stands. -->
<#macro stoppedShort how>
  <#list crossed.stopsShort as s>
    <@say "On " + fulls(s.parts) + ", stop " + s.depth + " short of an end that stands in a slot, and leave that corner square: " + how?replace("round", "rounded")?replace("chamfer", "chamfered") + ", it would show as a gap in the joint."/>
  </#list>
</#macro>

<#macro cutting>
  <#assign noun = plural(cut.term)>
  <#if has("cut-curve")>
    <@title ((cut.term == "notch")?then("Cut the shaped notches", "Saw the curves")) + inParts()/>
    <@say "Lay out the curves on " + fulls(parts) + " from the part drawings: draw the arcs by their radius, bend a thin batten through the points that have figures, and join them by straight lines where the edge is straight."/>
    <@bySheets "glue a copy to thin board, cut it out, and draw round it instead."/>
    <#if parts?filter(p -> p.count gt 1)?size gt 0>
      <@say "Where parts are alike, make the first to the line and use it as the template for the others; a left and a right one lie face to face."/>
    </#if>
    <@say "Saw just outside the line."/>
    <@say "Fair down to the line, working from the high points to the low ones, until no flat or bump can be felt."/>
  <#elseif has("cut-opening")>
    <#assign noun = many(cut.term, cut.count)>
    <@title "Cut the " + noun + inParts()/>
    <@say "Mark out " + fulls(parts) + " from the part drawings, with the centres of the roundings."/>
    <@bySheets "tape a copy on and prick the centres and the outline through it instead."/>
    <@say "Drill the roundings first, on a backing board, with " + (cut.holeBits?size == 0)?then("a bit of twice their radius", "the " + joined(cut.holeBits) + " bit" + (cut.holeBits?size == 1)?then("", "s")) + "."/>
    <@say "Saw out the waste between the holes just inside the line, and work back to the line."/>
    <#if cut.forHand>
      <@say "Ease the edges where a hand goes in."/>
    </#if>
  <#elseif has("cut-roundover")>
    <@title "Round over the edges" + inParts()/>
    <@say "Fit the roundover bit of " + cut.size + " radius, and try it on an offcut."/>
    <@slotsPlugged/>
    <#if verb == "trim" && cut.rounds?size == 2>
      <@say "Lay it with the upper side up and take the upper edges first; then turn it over, on to a blanket, with a helper where it is large, for the lower ones."/>
    <#elseif verb == "trim" && cut.rounds?size == 1>
      <@say (cut.rounds[0] == "top")?then("Lay it with the upper side up, with a helper where it is large", "Turn it over, on to a blanket, with a helper where it is large") + ": it is the " + (cut.rounds[0] == "top")?then("upper", "lower") + " edges that are rounded."/>
    </#if>
    <@say "Round the edges of " + fulls(parts) + " that the part drawings name" + cut.endGrain?then(": across the end grain first, then along it", "") + "."/>
    <@stoppedShort "round"/>
    <@say "Take the shape in two or three passes, the last one very light."/>
  <#elseif has("cut-edge-notch")>
    <@title "Cut the notches along the edges" + ofParts()/>
    <@say "Screw a board of scrap to the fence, so that the cutter may run into it, and set the cutter to a depth of " + cut.depth + "."/>
    <@say "Set the fence by an offcut of the same thickness until the notch is " + cut.size + " wide; take it in several passes, the edge last."/>
    <@say "Run the edge that the part drawing shows along the fence: " + letters() + "."/>
  <#elseif has("cut-notch") || has("cut-cutout") || has("cut-other")>
    <@title "Cut the " + noun + inParts()/>
    <@say "Mark out " + fulls(parts) + " from the part drawings."/>
    <@say "Saw on the waste side of the line."/>
    <@say "Trim to the line with a sharp chisel."/>
  <#elseif has("cut-taper") || has("cut-short-taper")>
    <@title "Cut the tapers" + inParts()/>
    <@say "Mark each taper on " + fulls(parts) + " from the part drawings: its starting line all round, and what is left at the end."/>
    <@bySheets "lay a copy on to check the line before you saw."/>
    <#if has("cut-short-taper")>
      <@say "Clamp the part in the vice and saw by hand a little outside the line, " + cut.size + " off over " + cut.depth + ": a part as short as this is not safe in a jig on the saw."/>
      <@say "Where a second face is tapered, draw its line again where the first cut took it away."/>
    <#else>
      <@say "Set a tapering jig so that the line from start to end lies along the path of the blade: " + cut.size + " off over " + cut.depth + "."/>
      <@say "Saw a little outside the line, with the end that gets thinner last."/>
      <@say "Where a second face is tapered, put the offcut back under the part, so that it lies flat."/>
      <@say "Without a jig, saw by hand on the waste side."/>
    </#if>
    <@say "Plane down to the lines, from the start of the taper towards the end, and stop at the starting line."/>
  <#elseif has("cut-bevel")>
    <@title "Bevel the ends" + ofParts()/>
    <@say "Tilt the blade to " + cut.angle + " from square and check it with the sliding bevel on a trial cut."/>
    <@say "Set a stop, so that the cut runs out right at the corner and " + pick(parts, "the part", "each part") + ", measured over all, stays as long as it is: " + letters() + "."/>
    <@say "Look at the part drawing before each cut: it shows which way each end leans."/>
  <#elseif has("cut-mitre")>
    <@title "Mitre the ends" + ofParts()/>
    <@say "Set the mitre gauge to " + cut.angle + " from square and check it with the sliding bevel on a trial cut."/>
    <@say "Set a stop, so that the cut runs out right at the corner and " + pick(parts, "the part", "each part") + ", measured over all, stays as long as it is: " + letters() + "."/>
    <@say "Look at the part drawing before each cut: it shows which way each end slants."/>
  <#elseif has("cut-chamfer")>
    <@title "Chamfer the edges" + ofParts()/>
    <#if cut.edges?size gt 0>
      <@say "On " + fulls(parts) + ", mark " + cut.size + " from the edge on both faces that meet there: " + joined(cut.edges?map(e -> words["edge." + e[0]] + " to " + words["edge." + e[1]])) + "."/>
    <#else>
      <@say "Where the part drawings of " + fulls(parts) + " show a chamfer, mark " + cut.size + " from the edge on both faces that meet there."/>
    </#if>
    <@slotsPlugged/>
    <@stoppedShort "chamfer"/>
    <@say "Take the edge off at 45° with a chamfer bit in the router, or with a plane" + cut.acrossGrain?then("; go across the grain first, then along it", "") + "."/>
  <#elseif has("cut-leaning")>
    <@title "Cut the leaning " + noun + inParts()/>
    <@say "Mark both walls on the face of " + fulls(parts) + " from the part drawings, and carry the lines down the edges with a sliding bevel set to " + cut.angle + " from square: from the face down, the walls lean " + leanings[cut.leans] + "."/>
    <@say "Try the width with the part that goes in, held at its slope: the slot is " + cut.leaningWidth + " wide along the face, more than the part is thick."/>
    <@say "Clamp a block, planed to the same angle, along each line and saw down against it, " + cut.depth + " deep."/>
    <@say "Chisel out the waste and level the bottom with a router plane, " + cut.depth + " deep all over."/>
    <@say "Try the part that goes into it: it should slide in by hand without play."/>
  <#elseif has("cut-mortise")>
    <@title "Cut the mortises" + inParts()/>
    <@say "Mark out the mortises in " + fulls(parts) + " from the part drawings, " + pick(parts, "all ", "alike parts side by side and ") + "from one and the same end."/>
    <@say "Set the cutter to " + cut.size + " wide" + (cut.depth == "")?then("", " and " + cut.depth + " deep") + "."/>
    <@say "Cut a trial mortise in an offcut and keep it: the tenons are fitted to it."/>
    <#list fences as fence>
      <@say "For " + fulls(fence.parts) + ", set the guide to " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <#if cut.depth == "">
      <@say "Cut from both faces to the middle, with the guide on the same side, so that neither face breaks out."/>
    <#else>
      <@say "Cut to the depth in several passes, and stop at the lines."/>
    </#if>
    <@say "Clear out the chips and square the ends with the chisel."/>
  <#elseif has("cut-haunch-socket")>
    <@title "Cut the haunch sockets" + inParts()/>
    <@say "Carry the side lines of the mortises on as far as the part drawings of " + fulls(parts) + " show: a socket is as wide as its mortise and begins at its end."/>
    <@say "Where a socket is open at the end, saw down inside both lines and chisel out what is between; else chop it as the mortise, or rout it with the guide set the same."/>
    <@say "Level the bottom " + cut.depth + " deep all over, so that the haunch reaches it when the shoulder closes."/>
  <#elseif has("cut-round-ended-mortise")>
    <@title "Rout the mortises for the loose tenons" + inParts()/>
    <@say "Lay each part (" + letters() + ") beside the one that it meets, as they will be joined, and mark the middle of each mortise across both."/>
    <@say "Set the stop of the router to " + cut.depth + ", with a bit of " + cut.size + ", and try the loose tenon in a trial mortise: it should slide in by hand without play."/>
    <@routerCarried/>
    <@insetTold "Set the guide"/>
    <@say "Rout each mortise in passes, " + cut.length + " long over all, and leave its ends round."/>
    <@say "Write one number on the two mortises of each joint."/>
  <#elseif has("cut-biscuit-slot")>
    <@title "Cut the biscuit slots" + inParts()/>
    <@say "Hold each part (" + letters() + ") in its place against the one that it meets and strike the middle of each biscuit across both, as the part drawings give it."/>
    <@say "Set the joiner to " + cut.forTitle + ", which is " + cut.depth + " deep."/>
    <@insetTold "Set the fence"/>
    <@say "Line the joiner's mark up with each line, press its fence down flat, and plunge to the stop: the part drawings show how many slots each part has."/>
  <#elseif has("cut-peg-slot")>
    <@title "Cut the peg slots" + inParts()/>
    <@say "Drill a hole of " + cut.size + " at both ends of each slot in " + fulls(parts) + ", where the part drawings show it, with a scrap of wood under the tongue."/>
    <@middles "slots"/>
    <@say "Clear out what is between with a chisel, along the grain of the wood beside it, until a peg slides from end to end: " + cut.length + " over all."/>
  <#elseif has("cut-screw-slot")>
    <@title "Cut the screw slots" + inParts()/>
    <@say "Drill a hole of " + cut.size + " at both ends of each slot in " + fulls(parts) + ", where the part drawings show it, with a scrap of wood under it" + slotsRun() + "."/>
    <@middles "slots"/>
    <@say "Clear out what is between with a chisel or a small saw until a screw slides from end to end: " + cut.length + " over all."/>
  <#elseif has("cut-fastener-slot")>
    <@title "Cut the slots for the top fasteners" + inParts()/>
    <@say "Mark the middle of each slot on " + fulls(parts) + " from the part drawings."/>
    <#list fences as fence>
      <@say "For " + fulls(fence.parts) + ", set the guide so that the middle of the slot lies " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Cut each slot " + cut.size + " wide, " + cut.depth + " deep and " + cut.length + " long, with a biscuit joiner or a router and edge guide run along the upper edge."/>
    <@say "Try a fastener: its tongue should slide in without force, and from end to end. Its foot has to end a little below the upper edge, so that the screw pulls the top down: if yours is of another height, measure from it."/>
  <#elseif has("cut-tenon")>
    <@title "Cut the tenons" + onParts()/>
    <@say "Mark out the tenons on " + fulls(parts) + " from the part drawings."/>
    <@say "Cut the shoulders first, all of them against one stop, " + cut.depth + " from the end."/>
    <@say "Saw the cheeks on an offcut of the same thickness until its tenon goes into the trial mortise by hand without play, about " + cut.size + " thick."/>
    <@say "Saw the cheeks of all tenons a little thick, then the edges."/>
    <#if has("cut-haunch")>
      <@say "At the edge where the drawing shows a haunch, saw along the tenon only down to the line of the haunch, then across to it, so that the haunch stays."/>
    </#if>
    <@say "Pare each tenon to its own mortise, and write one number on both."/>
    <#if has("cut-haunch")>
      <@say "Take a shaving off the end of a haunch that keeps its shoulder from closing."/>
    </#if>
    <@say "Chamfer the end of each tenon a little, so that it starts easily."/>
  <#elseif has("cut-spline-slot")>
    <@title "Cut the spline slots" + inParts()/>
    <@say "Set the cutter to " + cut.size + " wide and " + cut.depth + " deep, and try the spline in a trial slot: it should slide in by hand without play."/>
    <@say "A thinner blade cuts the slot in passes side by side: make the same pass in " + pick(parts, "all slots", "all parts") + " before you move the fence."/>
    <#if cut.inFrame>
      <@say "Hold " + fulls(parts) + " in a jig at 45°, the mitre flat on the table, the face that is seen against the fence for every cut: then the faces come out flush even if the slot is a hair off the middle."/>
      <#if cut.notched>
        <@say "Where that face is notched, it lies on the fence with its full thickness only: hold it there, and fill the notch with a scrap as thick as the notch is deep, so that the part cannot rock."/>
      </#if>
      <#list fences as fence>
        <@say "For " + fulls(fence.parts) + ", the nearer side of the slot lies " + fenced(fence.values)?replace(" edge", " face") + asDrawn(fence) + "."/>
      </#list>
      <@say "Cut each slot over the length of the mitre, as the part drawings show."/>
    <#else>
      <@say "Tilt the blade to 45° and lay " + fulls(parts) + " with the outer face up, the long point of the mitre against a stop; set the fence so that the nearer wall of the slot lies as far from the inner edge, measured on the mitre, as listed with this step."/>
      <@say "Cut every slot with the same edge of the parts leading, and see that no cut comes near the outer face."/>
    </#if>
  <#elseif has("cut-tails")>
    <@title "Cut the tails, " + cut.depth + " long," + onParts()/>
    <@say "Set a marking gauge to the baseline, " + cut.depth + " from the end, and try it against the thickness of the boards that take the tails" + (cut.tailLap)?then(": what it leaves is the lap", ": it must be no less") + "."/>
    <@say "Gauge the baseline on both faces and both edges of " + fulls(parts) + ", lightly."/>
    <@say "Set out the tails on the outside face from the part drawings, on every board from the same edge, square over the end, and down the face at 1:" + cut.slope + " with a sliding bevel; cross the waste."/>
    <@say "Saw down both sides of each tail to the baseline, on the waste side of the line and square to the face. Equal boards can be clamped together and sawn as one."/>
    <@say "Saw off the waste at both edges, saw out most of it between the tails with the coping saw, and chop to the baseline from both faces."/>
    <@say "Write one number on both boards of each corner: the pins are marked from their own tails."/>
  <#elseif has("cut-pins") || has("cut-half-blind-pins")>
    <@title "Cut the pins" + onParts()/>
    <@say "Gauge the baseline on " + fulls(parts) + ", " + cut.depth + " from the end, " + has("cut-pins")?then("on both faces.", "on the inner face.")/>
    <#if has("cut-half-blind-pins")>
      <@say "Gauge a line on the end, " + cut.tailLength + " from the inner face: the sockets stop there."/>
    </#if>
    <@say "Stand each board upright in the vice, inner face towards you, lay its own tails over the end with their baseline on its inner face" + has("cut-half-blind-pins")?then(" and their ends on the gauged line", "") + ", edges as in the part drawing, and mark round them with a knife."/>
    <@say "Carry the lines square down the inner face to the baseline, and cross what goes: the places of the tails."/>
    <#if has("cut-half-blind-pins")>
      <@say "Saw on the waste side of the lines, at a slant from the end to the baseline on the inner face, no further than both gauged lines."/>
      <@say "Clear the sockets with a straight bit set to " + cut.tailLength + ", or chop them out layer by layer, and pare their corners with the chisel."/>
    <#else>
      <@say "Saw on the waste side, so that the lines stay, square down to the baseline."/>
      <@say "Saw out most of the waste with the coping saw, and chop to the baseline from both faces."/>
    </#if>
    <@say "Start each corner together by hand and look where it binds; pare there. Do not drive it home more than once before the glue."/>
  <#elseif has("cut-half-lap") || has("cut-cross-lap")>
    <@title "Cut the " + noun + inParts()/>
    <@say "Mark out the " + noun + " on " + fulls(parts) + " from the part drawings, " + pick(parts, "", "alike parts side by side and from one and the same end; ") + "cross the waste."/>
    <#if cut.onEdge>
      <@say "Set the depth to " + cut.depth + " and try it on two offcuts as wide as the parts: notched and put together on edge, their edges must lie flush."/>
      <@stopsSet/>
      <@say "Stand " + pick(parts, "it", "each part") + " on edge against the mitre gauge. Where the cutter is as wide as the slot, set the stop so that it lies between both lines and cut each slot in one pass; with a narrower one, cut at both lines first, then clear what is between."/>
    <#else>
      <@say "Set the depth to " + cut.depth + " and try it on two offcuts of the parts' thickness: lapped over each other, their faces must lie flush."/>
      <@stopsSet/>
      <@say "Cut each shoulder first, with the part against the mitre gauge and a stop, then take the waste off pass by pass."/>
    </#if>
    <@say "Try each pair together by hand: shave a wall or a floor that is high, and write one number on both."/>
  <#elseif has("cut-open-mortise")>
    <@title "Cut the open mortises" + inParts()/>
    <@say "Mark out the open mortises on the ends and both edges of " + fulls(parts) + " from the part drawings, with the marking gauge set once for all; cross the waste."/>
    <#list fences as fence>
      <@say "For " + fulls(fence.parts) + ", gauge both lines from one and the same side: " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Saw both cheeks on an offcut of the same thickness first: the gap is " + cut.size + " wide and " + cut.depth + " deep."/>
    <@say "Saw the cheeks" + pick(parts, "", " in all parts") + " on the waste side, with the same face against the jig each time."/>
    <@say "Take out the waste at the bottom with a coping saw and chisel back to the line, from both edges to the middle."/>
  <#elseif has("cut-bridle-cheek")>
    <@title "Cut the bridle cheeks" + inParts()/>
    <@say "Mark out the cheeks on both faces of " + fulls(parts) + " from the part drawings, the shoulder lines carried all round with a square."/>
    <@say "Set the depth to " + cut.depth + " and cut both faces of an offcut of the same thickness: what is left should go into the open mortise by hand without play."/>
    <@stopsSet/>
    <@say "Cut each shoulder first, against a stop, then take the waste off pass by pass, the same on the other face."/>
    <@say "Pare each to its own mortise, and write one number on both."/>
  <#elseif has("cut-box-joint")>
    <@title "Cut the box joints" + onParts()/>
    <@say "Set the cutter to " + cut.size + " wide and " + cut.depth + " high. Screw a backing board to the mitre gauge, cut a slot through it, and fix in it a key as wide as the slot, one finger, " + cut.size + ", from the cutter."/>
    <@say "Cut a trial corner in two offcuts of the same thickness: if it is tight, move the key towards the cutter by half of what is too much; if it is loose, away from it."/>
    <@say "Cut the boards with a finger at the edge first: that edge against the key, then each new slot over the key in its turn."/>
    <@say "For the boards that begin with a slot, hold a finished board on the key by its first slot as a spacer, and make the first cut against it; go on as before."/>
    <@say "Count from the edge that the part drawings of " + fulls(parts) + " show, the same edge for every board, and mark the inside faces."/>
  <#elseif has("cut-lid-tongue")>
    <@title "Thin the edges" + ofParts()/>
    <@scrapFence "cut"/>
    <@say "Set the fence so that the cutter reaches " + cut.depth + " from the edge, and thin the edge of an offcut of the same thickness to " + cut.size + " on the faces that the part drawing shows."/>
    <@say "Try it in a lid groove: it should slide with a little play, its shoulder clear of the side."/>
    <#list crossed.thinned as t>
      <@say "Thin " + fulls([t.part]) + " at the same setting along " + pick([t.part], "its ", "their ") + joined(t.edges?map(e -> words["edge." + e])) + many(" edge", t.edges?size) + ", from the " + joined(t.faces?map(f -> words["edge." + f])) + many(" face", t.faces?size) + " only, across the grain first, then along it."/>
    </#list>
  <#elseif has("cut-lid-groove")>
    <@title "Cut the lid grooves" + inParts()/>
    <@say "Set the cutter to " + cut.size + " wide and " + cut.depth + " deep: that is more than the edge of the lid, so that it slides."/>
    <#if cut.lidEdge != "">
      <@say "Plane a scrap to " + cut.lidEdge + ", cut a trial groove in an offcut, and run the scrap in it: it should slide with a little play and not rattle. Keep it: the edges of the lid are thinned to the same thickness."/>
    <#else>
      <@say "Cut a trial groove in an offcut and run the edge of the lid in it: it should slide with a little play and not rattle."/>
    </#if>
    <#list fences as fence>
      <@say "For " + fulls(fence.parts) + ", set the fence to " + fenced(fence.values) + "."/>
    </#list>
    <@runStopped/>
  <#elseif has("cut-stopped-dado")>
    <@title "Rout the " + noun + inParts()/>
    <@say "Set the router to " + cut.depth + " deep. A bit narrower than " + cut.size + " cuts to that width in two passes, with the guide moved."/>
    <@say "Cut a trial dado in an offcut of the same thickness and try the part that goes into it: it should slide in by hand without play."/>
    <#list fences as fence>
      <@say "On " + fulls(fence.parts) + ", strike the near side of each dado " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Strike the line where the part drawing shows that each dado ends, clamp a straight guide across the part, and a stop on the guide so that the bit ends at that line."/>
    <@say "Rout from the open edge up to the stop, to the depth in two or three passes."/>
    <@say "Square each end with a chisel; or leave it round, and ease the notched corner of the part that goes in until it fits."/>
  <#elseif has("cut-tongue") || has("cut-large-tongue")>
    <@title "Cut the tongues" + onParts()/>
    <#if has("cut-large-tongue")>
    <@say "Clamp a straightedge across " + fulls(parts) + ", so that the router's cutter reaches " + cut.depth + " from the end: a panel of this size is moved over no machine. Set the depth by an offcut of the same thickness, until a tongue about " + cut.size + " thick goes into the groove by hand without play."/>
    <@say "Rout from the end up to the straightedge in passes of " + usual("1/8 in", "3 mm") + " at most; turn the panel over with a helper, set the straightedge to the same line, squared round both edges, and rout the other face."/>
    <@say "Trim the shoulders with the shoulder plane until they lie in line."/>
    <#else>
    <@scrapFence "cut"/>
    <@say "Set the fence so that the cutter reaches " + cut.depth + " from the end, and cut a trial tongue about " + cut.size + " thick on an offcut of the same thickness."/>
    <@say "Try it in the groove: it should slide in by hand without play."/>
    <@say "Cut the tongues on " + fulls(parts) + ", pushed across with the mitre gauge, on both faces with the end against this board, so that the shoulders lie in line."/>
    </#if>
  <#else>
    <@title "Cut the " + noun + inParts()/>
    <#assign guided = ["dado", "rabbet"]?seq_contains(cut.term)>
    <#assign sawn = guided?then(ways.fence + ways.sled, parts)>
    <#if sawn?size == 0>
      <@say "Set the router to " + cut.depth + " deep. A bit narrower than " + cut.size + " cuts to that width in two passes, with the guide moved" + (cut.takes == "sheet")?then(": go by an offcut of the sheet that goes in", "") + "."/>
    <#elseif cut.takes == "sheet">
      <@say "Set the cutter by an offcut of the sheet that goes in, about " + cut.size + " wide" + ((cut.depth == "")?then("", ", and " + cut.depth + " deep")) + "."/>
    <#else>
      <@say "Set the cutter to " + cut.size + " wide" + ((cut.depth == "")?then("", cut.inPasses?then("; the last pass cuts ", " and ") + cut.depth + " deep")) + "."/>
    </#if>
    <#if cut.inPasses>
      <@say "Cut it in several passes, the trial too: begin " + usual("3/8 in", "10 mm") + " deep, " + pick(parts, "", "take all parts through, ") + "and raise the cutter by as much at most for each further pass, for it is deep for its width."/>
    </#if>
    <@say "Cut a trial " + cut.term?replace("stopped ", "") + " in an offcut of the same thickness" + cut.inPasses?then(", to the first depth", "") + "."/>
    <#if cut.term == "rabbet">
      <@say "Try the part that goes into it: its face should lie flush with the end."/>
    <#elseif cut.takes == "item">
      <@say "Try the fitting that goes into it: it should slide in without force. Its foot has to end a little below the upper edge, so that the screw pulls the top down: if yours is of another height, measure from it."/>
    <#elseif cut.takes == "sheet">
      <@say "Try an offcut of the sheet in it: it should slide in by hand without play."/>
    <#elseif cut.takesTongue>
      <@say "Plane a scrap to " + cut.size + " and try it there: it should slide in by hand without play. Keep it: the tongues are cut to the same thickness."/>
    <#else>
      <@say "Try the part that goes into it: it should slide in by hand without play."/>
    </#if>
    <#if guided && cut.term == "rabbet">
      <@rabbeting/>
    <#elseif guided>
      <@dadoing/>
    <#else>
      <@fencing/>
      <#if cut.narrow?size gt 0>
        <@say "The groove goes into a narrow edge: of " + cut.narrow?map(n -> fulls(n.parts) + " the " + n.edges?map(e -> words["edge." + e] + " edge")?join(" and the ") + n.asDrawn?then(" as drawn", ""))?join(", of ") + ". Stand the part on that edge, its face against a tall fence."/>
      </#if>
      <@runStopped/>
    </#if>
  </#if>
  <@easing/>
</#macro>

<#-- Nothing is measured from the end of a tongue that has lost a shaving. -->
<#macro easing>
  <#if easedLater?size gt 0>
    <@say "Leave the ends of the tongues of " + fulls(easedLater) + " as they are: what comes next is measured from them, and they are eased after it."/>
  </#if>
  <#if eased?size gt 0>
    <#local waited = !has("cut-tongue") && !has("cut-large-tongue")>
    <#if waited><@with "shoulder-plane"/></#if>
    <@say waited?then("Now that nothing more is measured from there, plane", "Plane") + " a shaving off the end of each tongue" + (waited || easedLater?size gt 0)?then(" of " + fulls(eased), "") + ", so that its shoulders close before it reaches the bottom of the groove."/>
  </#if>
</#macro>

<#-- A router tips on what is narrower than half its base. -->
<#macro routerCarried>
  <#if rests.onEnd?size + rests.onNarrow?size gt 0><@with "router-blocks"/></#if>
  <#if rests.onEnd?size gt 0>
    <@say "Clamp " + fulls(rests.onEnd) + pick(rests.onEnd, "", ", one at a time,") + " upright between two straight blocks that lie flush with " + pick(rests.onEnd, "its", "the") + " end and carry the router: the end alone is too small for its base."/>
  </#if>
  <#if rests.onNarrow?size gt 0>
    <@say "The base of the router tips on a face as narrow as that of " + fulls(rests.onNarrow) + ": beside the face that is cut, clamp a straight block flush with it."/>
  </#if>
</#macro>

<#assign leanings = {"in": "towards the middle of the part", "out": "away from the middle of the part", "drawn": "as the part drawing shows"}>
<#macro fencing>
  <#list fences as fence>
    <@say "For " + fulls(fence.parts) + ", set the fence to " + fenced(fence.values) + fence.asDrawn?then(", as the part is drawn", "") + "."/>
  </#list>
</#macro>

<#-- Along an edge or an end a cutter may be wider than what it takes. -->
<#macro scrapFence what>
  <@say "Screw a board of scrap to the fence: a cutter that is wider than the " + what + " runs into it with the rest of its width."/>
</#macro>

<#-- An end that is short for the part's length must not run along a fence. -->
<#macro rabbeting>
  <#if ways.fence?size + ways.sled?size gt 0>
    <@scrapFence "rabbet"/>
  </#if>
  <#if ways.fence?size gt 0>
    <@say "Run the edge of " + fulls(ways.fence) + " that the part drawing shows along this board."/>
  </#if>
  <#if ways.sled?size gt 0>
    <@say "Push " + fulls(ways.sled) + " across with the mitre gauge, or on a crosscut sled, the end that the part drawing shows against this board: nothing is cut off that could jam there."/>
  </#if>
  <#if ways.router?size gt 0>
    <@say fulls(ways.router) + " " + pick(ways.router, "is", "are each") + " too large to go over the saw by the end: clamp a straightedge across, off the line of the shoulder by the distance from the edge of the bit to that of the router's base, a scrap flush with the edge where the bit comes out, and rout the rabbet in two or three passes, from left to right with the straightedge on the far side of the router."/>
  </#if>
</#macro>

<#macro dadoing>
  <#if ways.router?size == 0>
    <@fencing/>
  <#else>
    <#list fences as fence>
      <@say "On " + fulls(fence.parts) + ", strike the near side of each dado " + fenced(fence.values) + fence.asDrawn?then(", as the part is drawn", "") + "."/>
    </#list>
  </#if>
  <#if ways.fence?size gt 0>
    <@say "Run the edge named along the fence."/>
  </#if>
  <#if ways.sled?size gt 0>
    <@say "Push " + fulls(ways.sled) + " across with the mitre gauge, or on a crosscut sled, the end named against the fence: a dado cuts nothing off that could jam there."/>
  </#if>
  <#if ways.router?size gt 0>
    <@say fulls(ways.router) + " " + pick(ways.router, "is", "are each") + " too large to go over the saw by the end: clamp a straightedge across, off the line by the distance from the edge of the bit to that of the router's base, a scrap flush with the edge where the bit comes out, and rout in two or three passes."/>
  </#if>
</#macro>

<#-- Whether no part of the step is set out without one of them. -->
<#function allBySheets>
  <#return templatesTold && marks?filter(m -> !sheets?map(s -> s.mark)?seq_contains(m.mark))?size == 0>
</#function>

<#-- The full-size templates that save the laying out. -->
<#macro bySheets what>
  <#if sheets?size gt 0 && templatesTold>
    <#local told = sheets?map(s -> s.mark + (s.names?size == 1)?then("", " (" + number(s.names?size) + " of them, headed " + joined(s.names) + ")"))>
    <@say "Among the full-size templates at the end " + (sheets?size == 1 && sheets[0].names?size == 1)?then("there is one ", "there are some ") + "for " + joined(told) + ": " + what/>
  </#if>
</#macro>

<#-- A groove that ends inside the part runs from stop to stop. -->
<#function sidesOfFences>
  <#local sides = fences?map(f -> f.values?map(v -> v.side)?join(" "))?join(" ")>
  <#return ["edge", "end", "face"]?filter(side -> sides?contains(side))?join(" or ", "edge")>
</#function>
<#macro runStopped>
  <#local edge = sidesOfFences()>
  <#if cut.stops>
    <@say "Where the part drawing shows that it ends inside the part, clamp a stop to the fence for that end."/>
    <@say "Run the " + edge + " named along the fence, from stop to stop, and square those ends with a chisel."/>
  <#else>
    <@say "Run the " + edge + " named along the fence."/>
  </#if>
</#macro>

<#-- Parts that are not flush have a distance each: the faces must not be lined up. -->
<#macro insetTold how>
  <#list insets as i>
    <#if i.side == "end">
      <@say "Strike a line across " + fulls(i.parts) + " " + i.distance + " from the " + words["edge." + i.face] + " end, and set the guide so that the middle lies on it."/>
      <#continue>
    </#if>
    <@say how + " on " + fulls(i.parts) + " to " + i.distance + " from the " + words["edge." + i.face] + " " + i.side + " to the middle."/>
  </#list>
  <#if insets?filter(i -> i.side != "end")?size == 0>
  <#elseif insets?filter(i -> i.flush)?size == insets?size>
    <@say "Keep it on that side on both parts of a joint, so that they come out flush there."/>
  <#else>
    <@say "Set it anew for the other part of " + (insetOthers?size gt 0)?then("a joint, which for " + fulls(insetOthers) + " is done in another step", "the joint") + ": the two " + (insets?filter(i -> i.flush)?size gt 0)?then("are not all", "are not") + " flush, and each has its own distance."/>
  </#if>
</#macro>

<#assign pocketWays = {"up": " with the marked face up", "down": " with the marked face down"}>
<#function pocketWay p><#return (p.way == "either")?then(" with the face up that will look " + ((facesWay[p.face])!""), (pocketWays[p.way])!"")></#function>
<#macro drilling>
  <#if has("drill-pocket-hole")>
    <@title "Drill the pocket holes" + inParts()/>
    <@say "Set the jig and the stop collar for stock " + cut.size + " thick."/>
    <@say "Drill a trial hole in an offcut and drive a screw, so that you see how far its point comes out."/>
    <@say "Clamp " + pick(parts, "it", "each part") + " with the face up in which the holes begin, and drill where the part drawings show: " + pockets?map(p -> lettersOf(p.parts) + pocketWay(p))?join("; ") + "."/>
    <@say "Clear the chips out of every hole."/>
  <#elseif cut.term == "mount pilot">
    <#assign fittings = plural(words["kind." + cut.forKind])>
    <@title "Drill the pilot holes for the " + fittings + inParts()/>
    <@say "Lay " + pick(parts, "the part", "each part") + " on the bench and mark where the " + fittings + " will sit, by the sheet that comes with them: " + letters() + "."/>
    <#list slideLines as line>
      <@say slideOwner(line) + "on " + lookingFaces(line) + ", draw a line " + slideHeight(line) + ", for the " + (cut.forKind == "under-slide")?then("underside", "middle") + " of the member."/>
    </#list>
    <#if cut.forKind == "slide">
      <#list slideEnds as e>
        <@say "Its front end lies " + slideEnd(e) + "."/>
      </#list>
    </#if>
    <@say "Hold the fitting there and prick the holes through which it is screwed on."/>
    <@say "Drill them now: once the piece is together, no drill has room before them. The screws go in later, with a short screwdriver."/>
  <#else>
    <#assign cup = cut.forKind == "concealed-hinge">
    <#assign named = {"peg hole": "peg holes", "fastener recess": "recesses for the top fasteners", "counterbore": "counterbores"}>
    <#assign holes = named[cut.term]!(cup?then("hinge cups", (cut.forKind == "")?then("holes", words["kind." + cut.forKind] + " holes")))>
    <#assign bit = cup?then("Forstner", "brad-point")>
    <@title "Drill the " + holes + inParts()/>
    <#if cut.depth == "">
      <@say "Fit the " + cut.size + " " + bit + " bit."/>
      <@say "Clamp a backing board behind the part, so that the far side does not break out."/>
    <#else>
      <@say "Fit the " + cut.size + " " + bit + " bit with the stop at " + cut.depth + "."/>
    </#if>
    <#if cup>
      <@say "Try the depth in an offcut of the door's thickness: the cup must lie flush, and the point of the bit must not come through."/>
      <#list fences as fence>
        <@say "For " + fulls(fence.parts) + ", set the fence of the drill press so that the middles of the cups lie " + fenced(fence.values) + asDrawn(fence) + alongLines(fence) + "."/>
      </#list>
      <@say "Keep that edge against the fence, so that every cup has the same distance from it."/>
    </#if>
    <#if has("drill-dowel-hole")>
      <@say "Lay the parts that meet beside each other as they will be joined, and strike each hole's line across both."/>
      <@insetTold "Set the jig"/>
      <@say "Line the jig up with each line on " + letters() + " in turn."/>
      <@say "Bore to the stop, and clear the chips out of every hole: what is left in it keeps the joint from closing."/>
      <@say "Try a dowel by hand: it should go in with light taps, and come out again."/>
    <#else>
    <#if total(parts) gt 1 && !allBySheets()>
      <@say "Mark out the holes from one and the same end of every part."/>
    </#if>
    <@bySheets "tape a copy to the part, by the end and the edge drawn on it, and prick the holes through it."/>
    <#if !cup>
      <@middles holes/>
    </#if>
    <#if crossed.bored?size gt 0>
      <@say "The holes cross a slot: push a scrap that fills it into the slot of " + fulls(crossed.bored) + " first, or its near wall breaks out inside."/>
    </#if>
    <@say "Drill " + fulls(parts) + " as the part drawings show."/>
    <#if cut.forKind == "knob" && crossed.slides>
      <@with "countersink"/>
      <@say "Sink the hole from the other face too, now, while the wood is bare: the head of the knob's screw has to lie below it."/>
    </#if>
    <#if crossed.sunk?size gt 0>
      <@with "countersink"/>
      <@say "Countersink the holes to " + cut.sunk + " across, until a screw's head lies flush: on " + joined(crossed.sunk?map(s -> "the " + words["edge." + s.face] + " face of " + fulls(s.parts))) + "."/>
    </#if>
    </#if>
    <#if cut.forKind == "shelf-pin" && total(parts) gt 1>
      <@say "Lay facing parts side by side and see that the rows agree."/>
    </#if>
  </#if>
  <@easing/>
</#macro>

<#macro sanding>
  <@title onlyPanels?then("Sand " + plains(parts), "Sand the inside faces")/>
  <#assign grit = (finish.sandTo gt 0)?then(", up to grit " + finish.sandTo, "")>
  <#if oneFace?size gt 0>
    <@say "Sand each face that will look inwards on " + lettersOf(oneFace) + ", along the grain" + grit + "."/>
  </#if>
  <#if bothFaces?size gt 0>
    <@say "Sand both faces of " + (oneFace?filter(o -> bothFaces?filter(b -> b.mark == o.mark)?size gt 0)?size gt 0)?then("the others, ", "") + lettersOf(bothFaces?map(b -> b + {"counted": oneFace?filter(o -> o.mark == b.mark)?size gt 0})) + ", along the grain" + (oneFace?size gt 0)?then("", grit) + "."/>
  </#if>
  <#if framing?size gt 0>
    <@say "Sand the edges of " + lettersOf(framing) + " that will look at a panel."/>
  </#if>
  <@say "Keep the sander flat near joints, so that their edges stay crisp, and off " + lapped?then("the laps and walls that were fitted: a lap that loses a shaving is loose", "the walls and ends that were fitted: a joint that loses a shaving is loose") + "."/>
  <@say "Leave the glue faces of the joints as the saw left them, and do not thin an end that goes into another part."/>
  <@say "Brush off all dust, and write on an edge or in a joint what marks you sanded off."/>
</#macro>

<#-- Where a part comes in: in a sub-assembly, which lies on the bench as it likes, the picture says. -->
<#-- Above and below mean nothing once the piece lies on its back: then its ends and parts tell the way. -->
<#function fromSide side><#return words[lying?then("lying-from.", "from.") + side]></#function>
<#function homeFrom>
  <#if mirroredHere && sides?filter(s -> s.parts?filter(p -> !p.places?seq_contains(s.from))?size gt 0)?size == 0><#return "each from its own side"></#if>
  <#if mirroredHere><#return joined(sides?map(s -> oneOf(s) + " " + fromSide(s.from)))></#if>
  <#return inPiece?then((firstFrom == "")?then(fromSide(from), words["from.two"]), "")>
</#function>
<#-- Mirror images come from opposite sides: each is told with its own. -->
<#assign mirroredHere = (sides![])?size gt 1>
<#function oneOf s><#return (sides?map(each -> plains(each.parts))?join("|") == sides?map(each -> plains(s.parts))?join("|"))?then(number(total(s.parts)), plains(s.parts))></#function>
<#function fromTold><#return inPiece || mirroredHere></#function>
<#function inFrom><#return mirroredHere?then(", ", " ") + homeFrom()></#function>
<#-- On a bench nothing can be driven from below. -->
<#function facingUp item><#return fromBelow(item)?then("With the underside up, drive", fromBehind(item)?then("With the back up, drive", "Drive"))></#function>
<#function fromBehind item><#return (upSide!"") == "back" && item.drivenFrom?join("") == "back"></#function>
<#function fromBelow item><#return !inPiece && !lying && item.drivenFrom?join("") == "bottom"></#function>
<#-- Two straight moves; in a sub-assembly they are told as the picture shows it. -->
<#macro twoMoves>
  <#if firstFrom != "">
    <@say "It takes two straight moves" + inPiece?then("", ", told as the sub-assembly stands in the piece") + ": bring " + fulls(moving) + " in " + words["from." + firstFrom] + ", " + beside + " beside " + pick(moving, "its place", "their places") + ", and then push " + pick(moving, "it", "them") + " home " + words["from." + from] + "."/>
  </#if>
</#macro>
<#function drivenHow item>
  <#if lying && item.through?size gt 0><#return " through " + plains(item.through)></#if>
  <#if facingUp(item) != "Drive"><#return ""></#if>
  <#return (item.drivenFrom?size == 1)?then(" " + words["drive." + item.drivenFrom?first], "")>
</#function>

<#assign lying = (lies!"") != "">

<#assign washers = hardware?filter(h -> h.kind == "washer")>
<#-- How high the middle of a low part is that another hides, where something is driven into it unseen. -->
<#macro hiddenMiddles what>
  <#list hiddenEdges as it>
    <@with "tape"/>
    <@say "Measure " + it.below + " from the top edge of " + fulls(it.cover) + ": there " + what + " meet the middle of " + fulls(it.parts) + ", hidden behind " + pick(it.cover, "it", "them") + " and only " + it.high + " high."/>
  </#list>
</#macro>
<#macro driving>
  <#if has("fit-slotted") && washers?size gt 0>
    <@say "Put a washer on each screw that goes through a slot: " + number(washers[0].count) + " in all."/>
  </#if>
  <#list hardware as each>
    <#if each.kind == "wood-screw">
      <#if each.piloted>
        <@say "Drill a pilot hole through every screw hole, with the bit listed with this step, as deep into the wood behind as listed: set the stop deeper by the length of the screw hole."/>
        <#if longBit>
          <@with "long-bit"/>
          <@say "Wood stands close beside some of these holes: take long bits for them, or the chuck comes against it and the hole leans."/>
        </#if>
      <#else>
        <@say "Drill pilot holes for the " + many("screw", each.count) + "."/>
      </#if>
    <#elseif each.kind == "pocket-screw">
      <@say "Clamp " + (each.joints == 1)?then("the joint", "each joint") + " so that the parts cannot creep while the screws pull."/>
    </#if>
    <#if each.kind == "other" && splined != ""><#elseif each.kind == "other">
      <@say facingUp(each) + " in the " + ((each.count == 1)?then("", number(each.count) + " ")) + many(each.title?uncap_first, each.count) + drivenHow(each) + "."/>
      <#if has("fit-pegged")>
        <#if wait != "">
          <@say "Glue those pegs only that the note names, as you drive them."/>
        </#if>
        <@say "Saw off what stands out of the pegs just proud, and pare the ends flush with the face."/>
      </#if>
    <#elseif each.kind == "washer">
    <#elseif each.kind == "plug">
      <@say "Glue a plug over each screw, its grain along that of the part, and tap it down until it sits on the head."/>
    <#elseif inserts?map(i -> i.kind)?seq_contains(each.kind)>
      <#if !has("fit-glue")><@say "Set the " + (each.count == 1)?then("", number(each.count) + " ") + many(words["kind." + each.kind], each.count) + " in dry, half in each part."/></#if>
    <#elseif each.kind == "brad">
      <#local whereTo = (each.into?size gt 0)?then(" into " + fulls(each.into) + (each.count gt each.into?size)?then(", evenly spread", ""), "")>
      <#if each.seen>
        <@with "nail-set"/>
        <@with "wood-filler"/>
      </#if>
      <@hiddenMiddles "the brads"/>
      <@say facingUp(each) + " the " + ((each.count == 1)?then("", number(each.count) + " ")) + many("brad", each.count) + drivenHow(each) + whereTo + each.seen?then(", set " + (each.count == 1)?then("its head", "their heads") + " a little below the face, and fill the " + many("hole", each.count) + ": they are seen", "") + "."/>
    <#elseif !["top-fastener", "rotating-fastener", "button"]?seq_contains(each.kind)>
      <@say facingUp(each) + " the " + ((each.count == 1)?then("", number(each.count) + " ")) + many(words["kind." + each.kind], each.count) + drivenHow(each) + "."/>
    </#if>
  </#list>
  <#if has("fit-slotted")>
    <@say "Where a screw goes through a slot, set it in the middle and turn it only until " + (washers?size gt 0)?then("its washer lies on the wood: the part it holds has to move.", "its head lies on the wood: the part it holds has to move. Its head must be broader than the slot; where it is not, put a washer under it.")/>
  </#if>
</#macro>

<#macro flushing>
  <#if has("fit-plug")>
    <@say "Once the glue is dry, saw the plugs off just proud and pare them flush, from the edge that the grain runs up from."/>
  </#if>
</#macro>

<#-- Two of a kind by name; more than that by their marks. -->
<#function seatOf s><#return (s.on?size lte 1)?then(fulls(s.on), lettersOf(s.onMarks))></#function>
<#function atFaces s>
  <#local each = (s.each gt 0)?then(number(s.each) + " ", "")>
  <#return joined(s.faces?map(f -> each + words["at." + f]))>
</#function>
<#function fromEnds s>
  <#return (s.faces?size gt 1)?then("each " + s.side, "the " + words["edge." + s.faces[0]] + " " + s.side)>
</#function>

<#-- The faces from which one measures: those of two sides look both outwards or both inwards. -->
<#function measuredFaces s>
  <#if s.faces?size gt 1 && total(s.on) gt 1><#return "the " + s.inner?then("inner ", "outer ") + s.side + " of each of " + seatOf(s)></#if>
  <#return fromEnds(s) + " of " + seatOf(s)>
</#function>

<#macro marking>
  <#list seats as s>
    <#if s.how == "from" && s.laidOver && inPiece && !lying>
      <@say "Let " + fulls(s.on) + " stand out " + s.distance + " past " + fulls(s.parts) + " " + joined(s.faces?map(f -> words["at." + f])) + (s.faces?size gt 1)?then(" alike", "") + "."/>
    <#elseif s.how == "against" && !s.touches>
      <@say "Measure " + s.distance + " inwards from " + measuredFaces(s) + ", draw " + (s.faces?size gt 1)?then("lines", "a line") + " there on " + (onto?size == 1 && total(onto) == 1)?then(fulls(onto), "what " + fulls(s.parts) + pick(s.parts, " is", " are") + " set against") + ", and set " + (onto?size == 1 && total(onto) == 1)?then(fulls(s.parts), pick(s.parts, "it", "them")) + " with " + pick(s.parts, "its", "their") + " " + (s.faces?size gt 1)?then("nearer sides on the lines.", words["edge." + s.faces[0]] + " " + many(s.nearSide, total(s.parts)) + " on it.")/>
    <#elseif s.how == "from">
      <@say "Mark the place of " + fulls(s.parts) + " on " + seatOf(s) + ": " + s.distance + " from " + fromEnds(s) + " to the nearer side."/>
    <#elseif s.how == "middle">
      <@say "Draw a line on " + seatOf(s) + " for the " + (hardware?filter(h -> h.kind == "brad")?size gt 0)?then("brads", "screws") + ", along the middle of what lies behind it: " + s.distance + " from " + fromEnds(s) + " for " + fulls(s.parts) + "."/>
    <#elseif s.how == "past">
      <@say "Let " + fulls(s.parts) + " stand out " + s.distance + " past " + seatOf(s) + " " + atFaces(s) + "."/>
    </#if>
  </#list>
</#macro>

<#assign opposite = {"left": "right", "right": "left", "front": "back", "back": "front", "bottom": "top", "top": "bottom"}>
<#function looksInwards t>
  <#if t.parts?size != 1 || t.parts[0].count != 1><#return false></#if>
  <#local at = t.parts[0].places>
  <#return t.faces?filter(f -> at?seq_contains(opposite[f]))?size == t.faces?size>
</#function>

<#-- Which way round parts go in: before they go in. -->
<#macro turnedRound>
  <#local inward = (turned?size gt 1)?then(turned?filter(t -> t.term == "taper" && looksInwards(t))?size == turned?size, false)>
  <#if inward>
    <@say "Turn the tapered faces of all of them inwards" + (turned?filter(t -> t.drawn == "mirrored")?size gt 0)?then(": " + joined(turned?filter(t -> t.drawn == "drawn")?map(t -> plains(t.parts))) + " are as drawn, " + joined(turned?filter(t -> t.drawn == "mirrored")?map(t -> plains(t.parts))) + " mirrored", "") + "."/>
  </#if>
  <#list inward?then([], turned) as t>
    <#if t.facing>
      <#if t?is_first>
        <@say "Turn one end for end, so that the " + (t.term == "sunk")?then("countersunk holes look inwards: those of ", "two grooves face each other: that of ") + fulls(t.parts) + " " + facesWay[t.faces[0]] + "."/>
      </#if>
    <#elseif t.term != "sunk">
      <@say "See that " + fulls(t.parts) + (t.drawn == "")?then("", ", " + (t.drawn == "drawn")?then("as drawn", "mirrored") + ",") + pick(t.parts, " looks", " look") + " with the " + (t.term == "taper")?then("tapered " + many("face", t.faces?size), (t.term == "pin-row")?then("shelf pin holes", "groove")) + " " + joined(t.faces?map(f -> facesWay[f])) + "."/>
    </#if>
  </#list>
</#macro>

<#-- Whether what moves has an edge to keep flush with something. -->
<#function keptFlush><#return flush?size gt 0 || seats?filter(s -> s.how == "flush")?size gt 0></#function>

<#macro aligning>
  <#list seats as s>
    <#if s.how == "flush">
      <@say "Keep " + fulls(s.parts) + " flush with " + seatOf(s) + (s.each gt 0)?then(", ", " ") + (s.twins?size gt 0)?then(joined(s.twins?map(t -> "the " + words["place." + t.place] + " one " + words["at." + t.face])), atFaces(s)) + "."/>
    <#elseif s.how == "against" && s.touches>
      <@say "Push " + fulls(s.parts) + " against " + seatOf(s) + "."/>
    </#if>
  </#list>
  <#list flush as f>
    <#if flush?size == 1 && total(moving) == 1>
      <@say "Keep the " + joined(f.faces?map(face -> words["edge." + face])) + many(" edge", f.faces?size) + " flush."/>
    <#else>
      <@say "Keep " + fulls(f.parts) + " flush with " + fulls(f.on) + ": " + joined(f.faces?map(face -> words["edge." + face])) + many(" edge", f.faces?size) + "."/>
    </#if>
  </#list>
</#macro>

<#-- By what lies lowest and is held well; where nothing is yet, by what lies flat. -->
<#function liftedBy>
  <#local held = []>
  <#list careful as c><#local held = held + c.held?map(p -> p.mark)></#list>
  <#local free = lowest?filter(p -> !held?seq_contains(p.mark))>
  <#return fulls((free?size gt 0)?then(free, flatLowest))>
</#function>

<#-- Jaws that close on what lies undermost need room there. -->
<#macro turning>
  <#local jawsUnder = has("fit-glue") && (jawsUnder!false)>
  <#local bed = jawsUnder?then("on two battens, so that the jaws reach under it", "on a blanket")>
  <#if lying && jawsUnder><@with "long-battens"/></#if>
  <#if lying && liesAlready>
    <@say "It still lies on its " + lies + jawsUnder?then(": " + battened?then("see that the battens under it leave room for the jaws", "raise it on to two battens, so that the jaws reach under it"), "") + "."/>
  <#elseif lying && turnedOver>
    <@say "Turn what is together over, on to its " + lies + ", " + bed + "."/>
  <#elseif lying && !onEdge>
    <@say "Lay what is together on its " + lies + ", " + bed + "."/>
  <#elseif jawsUnder && inPiece>
    <@with "long-battens"/>
    <#if careful?size gt 0>
      <@say "Lift it by " + liftedBy() + " only, with a helper."/>
    </#if>
    <@say "Set what is together on two battens or blocks, so that the jaws reach under it."/>
  </#if>
</#macro>

<#-- What is fastened at once can no longer be pushed square. -->
<#assign fastened = hardware?filter(h -> ["wood-screw", "pocket-screw", "brad"]?seq_contains(h.kind) || (h.kind == "other" && (splined!"") == ""))?size gt 0>
<#macro squareFirst>
  <#if diagonal != "">
    <@say "Before you drive anything, measure both diagonals from outer corner to outer corner: each should be " + diagonal + "; push the longer one in until they agree."/>
  <#elseif acrossFeet != "">
    <@with "tape"/>
    <@say "Before you drive anything, measure both diagonals across the feet, from outer corner to outer corner: each should be " + acrossFeet + "; push the longer one in until they agree."/>
  </#if>
</#macro>

<#macro squaring>
  <#if diagonal + acrossFeet == "" && has("fit-glue") && corner && !mitred && !crate && !laidOn>
    <@say "Check each corner with the square while the clamps can still be shifted."/>
  </#if>
  <#if diagonal != "">
    <@with "tape"/>
    <@say "Measure both diagonals from outer corner to outer corner: each should be " + diagonal + "."/>
    <@say "If they differ, push the longer one in until they agree."/>
  <#elseif acrossFeet != "">
    <@say "Measure both diagonals across the feet, from outer corner to outer corner: each should be " + acrossFeet + "."/>
    <@say "If they differ, shift the clamps until they agree."/>
  </#if>
</#macro>

<#macro standing>
  <#if lying && staysLying>
    <@say "Leave it on its " + lies + " for the next step."/>
  <#elseif lying && !turnedNext && !staysClamped>
    <@say "Stand it up again."/>
  </#if>
</#macro>

<#-- What lies in both parts of a joint. -->
<#assign inserts = hardware?filter(h -> ["dowel", "biscuit", "loose-tenon"]?seq_contains(h.kind))>

<#-- Glue on one side first, then on the other. -->
<#macro insertGlued each withFaces>
  <#local room = (each.kind == "dowel")?then("holes", (each.kind == "biscuit")?then("slots", "mortises"))>
  <@say "Run glue round the walls of the " + room + " in " + fulls(each.first) + ", and set the " + (each.count == 1)?then("", number(each.count) + " ") + many(words["kind." + each.kind], each.count) + " there first."/>
  <@say "Put glue into the " + room + " of the " + pick(each.against, "other part, ", "other parts, ") + fulls(each.against) + withFaces?then(", and a thin coat on the faces that meet", "") + (each.kind == "biscuit")?then("; go on at once, for a biscuit swells and grips in minutes", "") + "."/>
</#macro>

<#macro glueing>
  <@turning/>
  <#if base?size gt 0>
    <#if onEdge || total(base) == 1 && !lying && (from!"") == "bottom" && hardware?filter(h -> h.drivenFrom?join("") == "top")?size gt 0>
      <@say "Stand " + fulls(base) + " on a long edge: then its joint" + (jointCount == 1)?then("", "s") + " and the face from which the screws go in are both in reach."/>
    <#else>
    <@say "Lay " + fulls(base) + " ready" + (upSide == "back")?then(", the back up,", "") + " with " + pick(base, "its", "their") + " joint" + ((total(base) == 1 && jointCount == 1)?then("", "s")) + " in reach."/>
    </#if>
  </#if>
  <@marking/>
  <@twoMoves/>
  <#if tiers?size gt 1>
    <#if !triedDry>
      <@say "Put it together dry, first " + tiers?map(t -> fulls(t.moving))?join(", then ") + ", and see that every joint closes."/>
      <@say "Take it apart again, and lay the parts in this order beside the clamps: there is no time to look for them once the glue is on."/>
    <#else>
      <@say "Lay beside the clamps first " + tiers?map(t -> fulls(t.moving))?join(", then ") + ": there is no time to look for them once the glue is on."/>
    </#if>
  <#elseif !triedDry>
    <@say "Put " + fulls(moving) + " in place dry" + fromTold()?then(", " + homeFrom() + ",", "") + " and see that every joint closes."/>
    <@say "Take " + pick(moving, "it", "them") + " off again."/>
  </#if>
  <@turnedRound/>
  <#if has("fit-glue") && !crate>
    <@say "Set the clamps to size before you spread any glue."/>
  </#if>
  <#if mitred>
    <@say "Brush a thin coat of glue on both faces of each mitre, give the end grain a few minutes to drink it, and brush on a second coat."/>
    <#if splined == "frame">
      <@say "Glue a spline" + madeMark + " into one slot of each mitre, its grain, or that of its faces, across the joint and its ends standing out alike, and brush glue into the other slot."/>
    </#if>
  </#if>
  <#assign laps = glueTerms?filter(t -> ["half-lap", "cross-lap", "bridle cheek", "box joint"]?seq_contains(t.term))>
  <#assign dovetails = glueTerms?filter(t -> ["pins", "half-blind pins"]?seq_contains(t.term))>
  <#if dovetails?size gt 0 && dovetails?size == glueTerms?size>
    <@say "Brush a thin coat of glue on the sides of the tails and of the pins; end grain needs hardly any."/>
  <#elseif laps?size gt 0 && laps?size == glueTerms?size>
    <@say "Brush a thin coat of glue on all faces that meet in the " + joined(laps?map(t -> many((t.term == "bridle cheek")?then("bridle", t.term), t.count))) + ", shoulders too."/>
  <#elseif glueTerms?size gt 0>
    <#assign letIn = jointCount - buttedCount>
    <@say "Brush a thin coat of glue into the " + joined(glueTerms?map(t -> many(t.term, t.count))) + " and on the " + many(glueTerms?map(t -> t.term)?seq_contains("mortise")?then("tenon", "end"), letIn) + " that " + (letIn == 1)?then("goes", "go") + " in" + glueTerms?map(t -> t.term)?seq_contains("groove")?then("; in a groove only where " + (jointCount == 1)?then("it sits", "they sit"), haunchInGroove?then("; in a groove only where " + (jointCount == 1)?then("the haunch sits", "the haunches sit"), "")) + "."/>
    <#list butted as b>
      <@say "Brush it on where " + fulls(b.one) + " meets " + fulls(b.other) + " with a plain face, too."/>
    </#list>
  <#elseif inserts?size gt 0>
    <#list inserts as each>
      <#assign room = (each.kind == "dowel")?then("holes", (each.kind == "biscuit")?then("slots", "mortises"))>
      <@insertGlued each each?is_last/>
    </#list>
  <#elseif !mitred>
    <@say "Brush a thin coat of glue on the faces that meet."/>
  </#if>
  <#if glueTerms?size gt 0>
    <#list inserts as each>
      <@insertGlued each false/>
    </#list>
  </#if>
  <#list tiers as t>
    <#if !t.glued>
      <@say "Slide " + fulls(t.moving) + " into " + pick(t.moving, "its", "their") + " grooves, without glue" + t.solid?then(": the wood has to be free to swell and shrink", "") + "."/>
    <#elseif glueTerms?size == 0 && inserts?size == 0>
      <@say "Set " + fulls(t.moving) + triedDry?then(" in place" + fromTold()?then(", " + homeFrom(), ""), " back in place") + "."/>
    <#elseif glueTerms?size gt 0 && dovetails?size == glueTerms?size>
      <@say "Drive " + fulls(t.moving) + " home with a mallet and a block across the " + t.pinned?then(pick(t.moving, "far end", "far end of each"), "tails") + (jointCount gt 1)?then(", both ends by turns", "") + "."/>
    <#else>
      <@say "Push " + fulls(t.moving) + " home" + (triedDry && fromTold())?then(", " + homeFrom(), "") + "."/>
    </#if>
  </#list>
  <@aligning/>
</#macro>

<#-- What slides in grooves, tried while it is bare. -->
<#macro tryingLid>
  <@title "Try " + plains(hung) + " in " + pick(hung, "its", "their") + " grooves"/>
  <@say "Slide " + plains(hung) + " into the grooves of " + fulls(slidIn) + " over the whole length, without force, and draw " + pick(hung, "it", "them") + " out again."/>
  <@say "Where it binds, rub the edge with a pencil and slide it in once more: the lead wipes off where it touches. Plane a shaving there, or clean out the groove, and try again."/>
  <@say "It should run with a little play and not rattle: in damp air it grows across its grain."/>
  <@say "Do it now, while grooves and faces are bare and a plane leaves no mark in the finish."/>
</#macro>

<#macro trying>
<#if has("trial-lid")><@tryingLid/><#return></#if>
  <#assign slides = tried.kind?ends_with("slide")>
  <@title "Fit the " + slides?then("drawer slides", many(words["kind." + tried.kind], tried.count)) + " and hang " + plains(hung) + " on trial"/>
  <@hanging tried/>
  <#if slides && tried.screws gt 0>
    <@say "Drill pilot holes for these two of each member" + bitGiven?then(", with the bits and to the depths listed with this step", "") + ", and drive a screw into each; the holes between wait until the slides come back for good" + tried.back?has_content?then(", at step " + tried.back?first + ", where a picture shows all of them", "") + "."/>
  </#if>
  <#if slides>
    <@say "Hang " + plains(hung) + " and see that " + pick(hung, "it", "each") + " runs freely over its whole length and closes to the end."/>
    <@say "Set " + pick(hung, "its front", "each front") + " in its opening on thin shims: where the gap is too narrow, plane the edge now, while it is bare."/>
    <#if keptFronts?size gt 0>
      <@say "Plane nothing off " + fulls(keptFronts) + ", whose grain runs on into what it was cut from: ease " + pick(keptFronts, "its opening", "their openings") + " instead."/>
    </#if>
  <#else>
    <@say "Hang " + plains(hung) + " with one or two screws in each hinge, and close " + pick(hung, "it", "them") + " on thin shims."/>
    <@say "Where the gap is too narrow, plane the edge of the door now, while it is bare; where it leans, " + (tried.kind == "butt-hinge")?then("pare a mortise, or pack it with paper", "turn the screws of the hinges or shift a plate") + "."/>
  </#if>
  <@say "Take all of it off again, and keep the screws and hinges or slides of each door and drawer together, marked with its place."?replace("hinges or slides of each door and drawer", slides?then("slides of each drawer", "hinges of each door"))/>
</#macro>

<#-- Edges that run on across a joint. -->
<#macro shaping>
  <@cutting/>
  <@say "They run on across the joints: do it all in one go, now that the parts are together" + acrossGlue?then(" and " + cured + " have gone by since they were glued", "") + ", and go slowly where the grain turns."/>
  <#if acrossGlue>
    <@say "The clamps come off after " + clampTime + ", but only in " + cured + " is the glue hard enough for a cutter."/>
  </#if>
</#macro>

<#macro dryFitting>
  <@title "Put " + (together?size == 0)?then("the piece", plains(together)) + " together dry"/>
  <@say "Put " + letters() + " together without glue, in the order of the steps that follow."/>
  <#if has("dry-fit-clamped")>
    <@say "Set the clamps to size and close every joint with them; where one stays open, pare it until it closes by hand."/>
  <#else>
    <#if buttedDry?size gt 0 && onlyButted && !leaning>
      <@say "Draw every joint together with a clamp across it, for plain faces hold by nothing else yet; where one stays open, trim the end until it closes."/>
    <#else>
      <@say "Close every joint by hand; where one stays open, pare it until it closes."/>
      <#if buttedDry?size gt 0>
        <@say lettersOf(buttedDry) + " meet with plain faces, on which nothing holds them yet: press these together " + leaning?then("by hand", "with a clamp across the joint,") + " while you look at the others."/>
      </#if>
    </#if>
    <#if buttedDry?size gt 0 && !leaning>
      <@with "bar-clamps"/>
    </#if>
  </#if>
  <#if letInDry?size gt 0>
    <@say "Set the " + joined(letInDry?map(i -> number(i.count) + " " + many(words["kind." + i.kind], i.count))) + " in dry, and draw them out again with the joints."/>
  </#if>
  <#if lids?size gt 0>
    <@say "Slide " + fulls(lids) + " into " + pick(lids, "its", "their") + " grooves too: what binds is far easier to mend before the glue."/>
  </#if>
  <@say "See that " + (together?size == 0)?then(leaning?then("it stands firm and nothing rocks", "it stands square and nothing rocks"), pick(together, "it lies flat", "each lies flat")) + (leaning || !has("dry-fit-clamped"))?then("", ", and that the two diagonals of what is square agree") + "."/>
  <@say "Write the same number on both sides of each joint, and take " + (whole?size gt 0)?then("it apart again; " + plains(whole) + pick(whole, " stays", " stay") + " whole.", "it all apart again.")/>
</#macro>

<#function countedOf kind>
  <#local count = 0>
  <#list hardware as h><#if h.kind == kind><#local count = count + h.count></#if></#list>
  <#return number(count) + " " + many(words["kind." + kind], count)>
</#function>

<#-- On a curved face some open less than the widest place asks. -->
<#function opensTo c><#return c.curved?then("up to ", "") + c.opening></#function>

<#-- Clamps on the same parts are told once: how many of them hold which part that comes in. -->
<#-- Where battens make fewer clamps do, it is told where they press and not how many would be best. -->
<#macro clampSettings counted=true>
  <#list clamps as c>
    <#if !counted>
      <@say "Clamp " + words["clamp." + c.axis] + " across the joints, the jaws on " + jawPairs(c.jaws)?join(", and on ") + ": the clamps open " + opensTo(c) + ", and more with pads."/>
      <#continue>
    </#if>
    <#local set = (clampsOfAll!(turns gt 1 && !forOne))?then("In all, set ", "Set ") + number(c.count) + " " + many("clamp", c.count) + " " + words["clamp." + c.axis] + " across the joint" + (c.count == 1)?then("", "s")>
    <#if jawsTold(c.jaws)?size == 1>
      <@say set + ", the jaws on " + fulls(c.jaws[0].on) + (c.jaws?size gt 1)?then(", in line with the parts between", "") + ": " + (c.count == 1)?then("it opens", "they open") + " " + opensTo(c) + ", and more with pads."/>
    <#else>
      <@say set + "; they open " + opensTo(c) + ", and more with pads: " + jawsTold(c.jaws)?join(", ") + "."/>
    </#if>
  </#list>
  <#list panelsPressed as p>
    <@say "Set those jaws on " + fulls(p.panel) + ", with a caul under each, right behind " + fulls(p.carriers) + ": beside " + pick(p.carriers, "it", "them") + " so thin a panel only gives."/>
  </#list>
  <#if cauled?size gt 0>
    <@with "long-battens"/>
    <@say "No clamp reaches " + fulls(cauled) + " there: lay a stiff batten across, planed a little crowned towards the work, and clamp down both its ends, so that its middle presses."/>
  </#if>
</#macro>

<#function jawPairs jaws>
  <#local pairs = []>
  <#list jaws as j><#if !pairs?seq_contains(fulls(j.on))><#local pairs = pairs + [fulls(j.on)]></#if></#list>
  <#return pairs>
</#function>
<#function jawsTold jaws>
  <#local told = []>
  <#local seen = []>
  <#list jaws as j>
    <#if !seen?seq_contains(fulls(j.on))>
      <#local seen = seen + [fulls(j.on)]>
      <#local like = jaws?filter(other -> fulls(other.on) == fulls(j.on))>
      <#local told = told + [number(total(like)) + " with the jaws on " + fulls(j.on) + (like?size gt 1)?then(", in line with the parts between", "")]>
    </#if>
  </#list>
  <#return told>
</#function>

<#-- How fasteners are shared out: five in each of the two long aprons (B) and two in the rail (C). -->
<#function sharedOut kind>
  <#local shares = []>
  <#list hardware?filter(h -> h.kind == kind) as h><#local shares = shares + h.held></#list>
  <#return joined(shares?map(s -> number(s.each) + " in " + (total(s.parts) gt 1)?then("each of ", "") + fulls(s.parts)))>
</#function>
<#-- What holds fasteners, by the name of its kind: the stretchers of a case, the rails of a table. -->
<#function holders kind>
  <#local held = []>
  <#list hardware?filter(h -> h.kind == kind) as h><#list h.held as s><#local held = held + s.parts></#list></#list>
  <#return (held?size gt 0 && held?filter(p -> p.title?lower_case?ends_with("stretcher"))?size == held?size)?then("stretchers", "rails")>
</#function>
<#function roomOf kind>
  <#local held = hardware?filter(h -> h.kind == kind)?first.held>
  <#return (held?size gt 0 && held?first.term?contains("groove"))?then("groove", "slot")>
</#function>

<#macro fitting>
  <#assign rotating = has("fit-rotating-fastener")>
  <#if has("fit-top-fastener") || has("fit-button") || rotating>
    <@title "Fasten " + plains(moving)/>
    <#if rotating>
      <@say "Screw the " + countedOf("rotating-fastener") + " into their recesses, " + sharedOut("rotating-fastener") + ", just so tight that they still turn."/>
    </#if>
    <#if overhung>
      <@say "Lay " + fulls(moving) + " in place with the overhangs listed with this step."/>
    <#else>
      <@say "Lay " + fulls(moving) + " in place and even out the overhang at both ends."/>
    </#if>
    <#if rotating>
      <@say "Turn each so that it stands square to what it is screwed to: as it turns, the top can swell and shrink."/>
    </#if>
    <#if has("fit-button")>
      <@say "Cut the " + countedOf("button") + " from an offcut, their grain along the tongue, and see that each tongue slides in its slot by hand."/>
      <@say "Push the tongues into their " + plural(roomOf("button")) + " on the inside of the " + holders("button") + ", " + sharedOut("button") + ", and leave room before the end of each where the top moves towards it, so that the top can swell and shrink."/>
    </#if>
    <#if has("fit-top-fastener")>
      <#local room = roomOf("top-fastener")>
      <@say "Hook the " + countedOf("top-fastener") + " into the " + plural(room) + " on the inside of the " + holders("top-fastener") + ", " + sharedOut("top-fastener") + (room == "groove")?then(", evenly spread", "") + "."/>
      <#if said?size == 0><@say (room == "groove")?then("On " + holders("top-fastener") + " that run along the grain of the top, leave each tongue a little short of the bottom of its groove, so that the top can swell and shrink.", "Leave each a little short of the end of its slot, so that the top can swell and shrink.")/></#if>
    </#if>
    <@with "depth-stop"/>
    <@with "screwdriver"/>
    <@say closedBelow?then("Reach in from inside", "Reach in from below") + " and drill pilot holes" + bitGiven?then(" with the bit listed with this step, its stop at the depth given there", " with a stop") + ", so that the bit cannot come through the top."/>
    <@say "Drive one screw up into the top through each of them, and do not force it tight."/>
  <#elseif has("fit-front")>
    <@title "Fix " + plains(moving) + (inUnits?size gt 0)?then(" of " + plains(inUnits), "")/>
    <#if total(moving) gt 1>
      <@say "Fix the fronts one after the other, the lowest first: " + fulls(moving) + "."/>
    </#if>
    <#local held = words["kind." + handle]>
    <#local screwed = has("fit-front-screwed") && !has("fit-front-taped")>
    <#if !screwed || has("fit-front-turning")>
      <@say "Stick double-sided tape to the front of the box and peel off its backing" + screwed?then(": on one screw alone the front would turn", "") + "."/>
    </#if>
    <#local evened = (gaps == "all")?then("even out the gap all round", (gaps == "pairs")?then("even out the gaps, left against right and above against below", "bring its gaps to what is listed"))>
    <@say "Push the drawer shut."/>
    <@say "Set " + (total(moving) gt 1)?then("its front", fulls(moving)) + " in its opening on thin shims and " + evened + "."/>
    <#if !screwed>
      <@say "Press it on to the tape."/>
    <#else>
      <@say has("fit-front-turning")?then("Press it on to the tape, and drive a temporary screw from the front, through the hole for the ", "Hold it there and drive two temporary screws from the front, through the holes for the ") + held + ", a little way into the box; " + has("fit-front-turning")?then("it must be shorter than both together, its head broader than the hole.", "they must be shorter than both together, their heads broader than the holes.")/>
    </#if>
    <@say "Draw the drawer out with care" + screwed?then("", ", by a screw or a hook in a hole for the " + held + " or by its lower edge") + ", and clamp the front to the box."/>
    <#if total(moving) gt 1>
      <#list hardware?filter(h -> h.kind == "wood-screw") as h>
        <@say "Drill a pilot hole through every screw hole" + h.piloted?then(", with the bit listed with this step, as deep into the wood behind as listed,", "") + " and drive " + (h.count % total(moving) == 0)?then("the " + number(h.count / total(moving)) + " screws", "a screw through each") + drivenHow(h) + "."/>
      </#list>
    <#else>
      <@driving/>
    </#if>
    <#if screwed>
      <@say "Take the temporary " + has("fit-front-turning")?then("screw", "screws") + " out."/>
    </#if>
    <#if has("fit-front-drilled")>
      <@say "Clamp a scrap of wood behind the box and drill on through it from the front, by the holes for the " + held + " and with the bit listed with this step, so that front and box are bored in one line."/>
    <#elseif !screwed>
      <@say "Where the holes for the " + held + " in front and box do not meet, drill through them again from the front."/>
    </#if>
    <@say "Push the drawer shut and look at the gap once more; the " + held + " goes on last."/>
  <#elseif has("fit-door")>
    <@title "Hang " + plains(moving)/>
    <#if total(moving) gt 1>
      <@say "Hang one after the other: " + fulls(moving) + "."/>
    </#if>
    <#if hangers?seq_contains("concealed-hinge")>
      <@say "Hold " + pick(moving, fulls(moving), "each of them") + " open in its opening and set the arms of its hinges on their plates, the upper one first."/>
      <@say "Close it with care and look at the gap all round."/>
      <@say "Turn the screws of the hinges to shift it sideways, up and down, and in and out, until the gap is even and it closes flush."/>
    <#elseif tried>
      <@say "Hold " + pick(moving, fulls(moving), "each of them") + " open in its opening and drive one screw into the second leaf of each hinge."/>
      <@say "Close it and look at the gap; when it is as it was on trial, drive the other screws."/>
    <#else>
      <@say "Wedge " + pick(moving, fulls(moving), "each of them") + " in its opening on thin shims, so that " + (gaps == "all")?then("the gap is even all round", (gaps == "pairs")?then("the gaps are even, left against right and above against below", "its gaps are as listed")) + "."/>
      <@say "Open it, prop it, and drive one screw into the second leaf of each hinge."/>
      <@say "Close it and look at the gap: pare a mortise deeper, or pack it with paper, until the gap is even."/>
      <@say "Drive the other screws."/>
    </#if>
  <#elseif has("fit-loose")>
    <#if hangers?seq_contains("under-slide")>
      <@title "Hang " + plains(moving)/>
      <@say "Pull both runners out of the case and lay " + fulls(moving) + " on them."/>
      <@say "Push in until the hooks at the back and the catches under the front have taken hold."/>
      <@say "See that " + pick(moving, "it", "each") + " runs freely, lies level and closes to the end; turn the height screws of the catches if it does not."/>
    <#elseif hangers?seq_contains("slide")>
      <@title "Hang " + plains(moving)/>
      <@say "Pull the runners out of the case and set the drawer members on them."/>
      <@say "Push " + fulls(moving) + " in gently until " + pick(moving, "it stops", "each stops") + " at the back."/>
      <#if frontLater>
        <@say "See that " + pick(moving, "it", "each") + " runs freely over its whole length and lies level."/>
      <#else>
        <@say "Look at the gap round the front and shift the slides until it is even."/>
      </#if>
    <#elseif hangers?seq_contains("shelf-pin")>
      <@title "Lay " + plains(moving) + " on " + pick(moving, "its", "their") + " pins"/>
      <@twoMoves/>
      <@say "Bring " + fulls(moving) + " in" + inFrom() + "."/>
      <@say "Set " + pick(moving, "it", "them") + " down on the pins and press each corner to see that nothing rocks."/>
    <#else>
      <@title "Put " + plains(moving) + " in place"/>
      <@twoMoves/>
      <@say "Bring " + fulls(moving) + " in" + inFrom() + " and set " + pick(moving, "it", "them") + " down."/>
    </#if>
  <#elseif has("fit-glue") || has("fit-glue-held")>
    <#if whole?size gt 0 && tiers?size gt 1>
# Glue up ${plains(whole)}
    <#else>
      <@title "Glue " + plains(gluing) + ontoWords()/>
    </#if>
    <@glueing/>
    <#if fastened><@squareFirst/></#if>
    <@driving/>
    <#if has("fit-glue") && laidOn>
      <@with "long-battens"/>
      <#local fewer = total(clamps) gt shopClamps>
      <@clampSettings !fewer/>
      <#if fewer>
        <@say "The shop has " + number(shopClamps) + " clamps: lay stiff battens, crowned a little towards the work, along every glued edge. Clamp down their ends first, one clamp for both where two battens meet, then the middles of the long ones with what is left; where a seam stays open, borrow another clamp."/>
      </#if>
      <@say "Put battens under the jaws" + (clamps?size gt 0)?then(", and tighten from the middle outwards, just hard enough to close every joint.", ", and clamp " + pick(moving, "it", "them") + " down along every glued edge, from the middle outwards.")/>
    <#elseif has("fit-glue") && mitred>
      <@say "Draw the mitres together with a band clamp, or with clamps on angled blocks, and see that no corner slides along the other."/>
      <#if splined == "case">
        <@say "Under the clamp, slide a spline" + madeMark + " into each slot from the edge, with a little glue on both its faces and its grain across the joint; trim it flush once the glue is dry."/>
      </#if>
    <#elseif has("fit-glue") && crate>
      <@say "Press the slots into each other until the edges lie flush: they hold the parts, and no clamp is needed but a weight on top."/>
      <@say "See with the square that they cross at right angles, before the glue takes hold."/>
    <#elseif has("fit-glue")>
      <@clampSettings/>
      <#if strips?size gt 0>
        <@with "long-battens"/>
        <@say "Under the jaws, along " + fulls(strips) + ", lay " + pick(strips, "a stiff batten", "stiff battens") + ", crowned a little towards the work: so thin a strip closes only where a clamp stands."/>
      </#if>
      <#if clampsBare>
        <@say "Where the faces that would take the jaws lean, clamp between cauls cut to the slope, or pull a strap round the work."/>
      </#if>
      <@say (clamps?size == 0)?then("Clamp across every glued joint, just hard enough to close it.", "Tighten " + ((clamps?size == 1 && clamps[0].count == 1)?then("it", "them by turns")) + ", just hard enough to close every joint.")/>
      <#if laps?filter(t -> t.term != "box joint")?size gt 0>
        <@say "Set a small clamp with pads over each of these joints, so that the faces that meet are pressed together."/>
      </#if>
    </#if>
    <#if !fastened><@squaring/></#if>
    <@say "Wipe off the glue that comes out with a damp cloth, before it skins over."/>
    <#if wait != "">
      <@say (has("fit-glue") && !crate)?then("Leave the clamps on for " + (turns gt 1)?then(waitEach + " each time", wait) + ", or as long as the glue's label says.", "Let the glue set for " + wait + ", or as long as its label says, before you move the work.")/>
    </#if>
    <#if splined == "frame" && mitred>
      <@say "Once the glue is hard, saw off the ends of the splines just proud, and pare them flush towards the middle of the part, before any edge is shaped."/>
    </#if>
    <@flushing/>
    <@standing/>
  <#elseif has("fit-first") && hardware?size == 0 && base?size == 0 && onto?size == 0>
    <@title "Set up " + plains(moving)/>
    <@say "Set " + fulls(moving) + " upright on a level place and see that " + pick(moving, "it does", "they do") + " not rock."/>
    <@with "wedge"/>
    <@with "handsaw"/>
    <@say "Where a leg is short, slide a thin wedge under it, and take as much off the other legs as the wedge is thick there."/>
  <#elseif has("fit-lid")>
    <@title "Slide " + plains(moving) + " into " + pick(moving, "its", "their") + " grooves"/>
    <@twoMoves/>
    <@with "paraffin-wax"/>
    <@say "Rub a little paraffin wax on the edges of " + fulls(moving) + " and into the grooves."/>
    <@say "Slide " + pick(moving, "it", "them") + " in" + fromTold()?then(inFrom(), "") + ", as far as the grooves go, draw " + pick(moving, "it", "them") + " out, and push " + pick(moving, "it", "them") + " home again: nothing should bind."/>
    <@say "Where it rubs, shave the edge that runs in the groove, which has no finish, and wax it anew. No glue comes near it."/>
  <#elseif hardware?size == 0 && has("fit-panel")>
    <@title "Slide " + plains(moving) + " into " + pick(moving, "its", "their") + " grooves"/>
    <@twoMoves/>
    <@say "Slide " + fulls(moving) + " in" + fromTold()?then(inFrom(), "") + " until " + pick(moving, "it sits", "they sit") + " at the bottom of the groove."/>
    <#if movingSolid>
      <@say "Use no glue: the wood has to be free to swell and shrink."/>
    <#else>
      <@say "Use no glue in the grooves."/>
    </#if>
  <#else>
    <@title (hardware?size gt 0)?then(hardware?map(each -> each.kind)?seq_contains("wood-screw") || hardware?map(each -> each.kind)?seq_contains("pocket-screw"), false)?then("Screw ", (hardware?size gt 0)?then("Fasten ", "Fit ")) + plains(moving) + ontoWords()/>
    <@turning/>
    <#if base?size gt 0>
      <@say "Lay " + fulls(base) + " ready" + (has("fit-pegged") && hardware?filter(h -> fromBelow(h))?size gt 0)?then(", the underside up", "") + "."/>
    </#if>
    <@marking/>
    <#if has("fit-panel")>
      <@twoMoves/>
      <@say "Slide " + fulls(moving) + " in" + fromTold()?then(inFrom(), "") + keptFlush()?then(", without glue", " until " + pick(moving, "it sits", "they sit") + " at the bottom of the groove, without glue") + "."/>
    <#else>
    <#if acrossGrain>
      <@say "Use no glue in the groove, or only over " + inch?then("a few inches", "80 mm") + " in the middle: the wood that lies across it has to be free to swell and shrink."/>
    </#if>
    <@turnedRound/>
    <@twoMoves/>
    <#if firstFrom == "">
      <@say inPiece?then("Bring " + fulls(moving) + " in" + inFrom(), "Set " + fulls(moving) + " in place" + mirroredHere?then(", " + homeFrom(), "")) + "."/>
    </#if>
    </#if>
    <@aligning/>
    <#if has("fit-panel") && keptFlush()>
      <@say "The flush edge governs, not the bottom of the groove: a hair of room may be left down there."/>
    </#if>
    <#if has("fit-pegged")>
      <#list clamps as c>
        <@say "Set " + number(c.count) + " " + many("clamp", c.count) + " " + words["clamp." + c.axis] + " across the joint" + (c.count == 1)?then("", "s") + ", the jaws on " + joined(c.jaws?map(j -> fulls(j.on))) + ": " + (c.count == 1)?then("it opens", "they open") + " " + opensTo(c) + ", and more with pads."/>
      </#list>
      <@say "Draw " + fulls(moving) + " home with the clamps, until no gap shows at the shoulders, and leave them on until the pegs are in."/>
    </#if>
    <#if hardware?size gt 0><@squareFirst/></#if>
    <@driving/>
    <#if has("fit-pegged") && wait != "">
      <@say "Let the glue on a peg set for " + wait + ", or as long as its label says, before you move the work."/>
    </#if>
    <#if hardware?size == 0><@squaring/></#if>
    <@flushing/>
    <@standing/>
  </#if>
</#macro>

<#function ontoWords>
  <#if onto?size == 0><#return ""></#if>
  <#if onto?size gt 2><#return " in place"></#if>
  <#return " to " + plains((gluedTo?size gt 0)?then(gluedTo, onto))>
</#function>

<#function putting how>
  <#switch how>
    <#case "wiped"><#return "Wipe"><#break>
    <#case "brushed"><#return "Brush"><#break>
    <#case "sprayed"><#return "Spray"><#break>
    <#default><#return "Put">
  </#switch>
</#function>

<#macro testing>
  <@title "Try the finish on an offcut"/>
  <@say "Take an offcut of every wood " + sheeted?then("and sheet ", "") + "that is finished."/>
  <@say "Sand it as you will sand the piece" + ((finish.sandTo gt 0)?then(", up to grit " + finish.sandTo, "")) + "."/>
  <@say putting(finish.how) + " on " + finish.product + " as the label says, every coat, and let each dry" + (finish.last?size gt 0)?then("; then " + joined(finish.last?map(l -> l.product)) + " over it, as on the piece", "") + "."/>
  <@say "Leave a field of it bare and begin each coat one field further on, so that the last has them all."/>
  <@say "Go on with the next steps meanwhile."/>
  <@say "Finish the piece only when you like the colour and the feel of the offcut."/>
</#macro>

<#function masked at><#return joined(at?map(m -> (m.count gt 1)?then(number(m.count) + " times ", "") + "the " + ((m.term == "")?then("place of ", m.term + " for ")) + m.mark + ", " + m.size))></#function>

<#-- What is finished before it is built in. -->
<#macro preFinishing>
  <#assign panels = lettersOf(earlyPanels)>
  <#assign faces = (earlyOneFace + earlyBothFaces)>
  <@title ((faces?size == 0)?then("Finish ", "Finish the inside of ")) + (parts?size <= 2)?then(plains(parts), joined(marks?map(p -> p.mark))) + " before " + pick(parts, "it is", "they are") + " built in"/>
  <#if earlyPanels?size gt 0>
    <@say "Finish " + panels + " on both faces and on the edges: when the wood shrinks, its edges come a little out of their grooves, and a bare strip would show."/>
  </#if>
  <#if earlyOneFace?size gt 0>
    <@say "Finish the face of " + lettersOf(earlyOneFace) + " that will look inwards: no brush reaches all of it later."/>
  </#if>
  <#if earlyBothFaces?size gt 0>
    <@say "Finish both faces of " + lettersOf(earlyBothFaces) + ": no brush reaches all of them later."/>
  </#if>
  <#list masks as m>
    <@say "First mask with tape on " + lettersOf(m.on) + " what is glued later, for glue needs bare wood: " + masked(m.at) + "."/>
  </#list>
  <#if faces?size gt 0 && masks?size gt 0>
    <@say "Keep the finish off the ends that go into other parts too."/>
  </#if>
  <@say putting(finish.how) + " a thin, even coat of " + finish.product + " on these faces and let none run into a joint."/>
  <@coats/>
  <#if masks?size gt 0>
    <@say "Pull the tape off before the last coat is hard, and see that the wood below it is bare."/>
  <#else>
    <@say "Nothing need be masked: no glue comes to these faces."/>
  </#if>
</#macro>

<#macro coats>
  <#if finish.oil>
    <@say "After the time that the label gives, wipe off all that is still wet, or it stays sticky."/>
  </#if>
  <@say "Let it dry for " + finish.dry + ((finish.coats gt 1)?then(" after each coat", "")) + ", or as long as the label says."/>
  <#if finish.coats gt 1>
    <@say "Rub each dry coat down lightly before the next and wipe off the dust; it takes " + number(finish.coats) + (finish.last?size gt 0)?then(" coats", "") + " in all."/>
  </#if>
</#macro>

<#-- What goes on over the coats. -->
<#macro lastCoats>
  <#list finish.last as l>
    <#if l.wax>
      <@with "fine-pad"/>
      <@say "When the last coat of " + finish.product + " is hard, rub it down with a fine pad until it is dull and wipe off all dust."/>
      <@say putting((l.how == "")?then("wiped", l.how)) + " " + l.product + " on thinly, " + (l.coats == 1)?then("once", number(l.coats) + " times") + ", let it haze for " + l.dry + ", or as long as its label says, and buff it with a clean cloth."/>
      <@say "Nothing sticks to wax, neither glue nor another coat: let it be the very last."/>
    <#else>
      <@say "When the last coat of " + finish.product + " is dry, rub it down lightly and " + putting(l.how)?uncap_first + " on " + l.product + ", " + (l.coats == 1)?then("one coat", number(l.coats) + " coats") + "; let it dry for " + l.dry + (l.coats == 1)?then("", " after each") + ", or as long as its label says."/>
    </#if>
  </#list>
</#macro>

<#macro finishing>
  <#assign early = earlyPanels + earlyOneFace + earlyBothFaces>
  <@title "Finish the piece"/>
  <#local grit = (finish.sandTo gt 0)?then(" up to grit " + finish.sandTo, "")>
  <#local goesOn = unsanded?size + sandedOnce?size gt 0>
  <@say "With a respirator on, sand" + goesOn?then(grit + ": first the outside", " the outside" + grit) + opens?then(", and the edges and backs that show inside when the piece is open and were not sanded before", "") + "."/>
  <#if unsanded?size gt 0>
    <@say "Then sand all faces of what is still loose and was not sanded before: " + lettersOf(unsanded) + "."/>
  </#if>
  <#if sandedOnce?size gt 0>
    <@say "Then sand all that shows of " + lettersOf(sandedOnce) + ": no step before sanded " + pick(sandedOnce, "it", "them") + "."/>
  </#if>
  <@say "Brush off all dust."/>
  <#if early?size gt 0>
    <@say "Keep sander and brush off what is finished already: " + joined((earlyPanels?size gt 0)?then(["all of " + lettersOf(earlyPanels)], []) + (earlyOneFace?size gt 0)?then(["the inside of " + lettersOf(earlyOneFace)], []) + (earlyBothFaces?size gt 0)?then(["both faces of " + lettersOf(earlyBothFaces)], [])) + "."/>
  </#if>
  <#if toCover?size gt 0>
    <@with "masking-tape"/>
    <#if finishTold>
      <@say "Before the first coat, cover or tape over what the page on the finish lists under “What to keep bare”."/>
    <#else>
      <#list toCover as place>
        <@say "Before the first coat, cover on " + place.on + ": " + place.what + "."/>
      </#list>
    </#if>
  </#if>
  <#if sliding?size gt 0>
    <@with "masking-tape"/>
    <@say "Before the first coat, tape over the edges of " + fulls(sliding) + " that run in grooves, and the faces above and below them as far as they go in: every coat there takes of the room to slide."/>
  </#if>
  <@say putting(finish.how) + " a thin, even coat of " + finish.product + " on every " + (early?size gt 0)?then("other face, inside and outside, of loose parts and undersides too", "part, inside and outside, loose parts and undersides too") + "."/>
  <#if sliding?size gt 0>
    <@say "Keep the finish out of the grooves of " + fulls(slidIn) + ", and wipe out at once what runs into one."/>
  </#if>
  <@coats/>
  <@lastCoats/>
  <#if sliding?size gt 0>
    <@say "Pull the tape off, and leave these edges and the grooves bare: they get a little wax when " + pick(sliding, "it goes", "they go") + " in."/>
  </#if>
</#macro>

<#-- What is drilled before screws go in: only where the holes are not there already. -->
<#function pilotsFirst>
  <#if drilledEarly?size gt 0 && !bitGiven><#return "The pilot holes are there already: "></#if>
  <#return "Drill " + (drilledEarly?size gt 0)?then("the other ", "") + "pilot holes" + bitGiven?then(" with the bits and to the depths listed with this step,", "") + " and ">
</#function>
<#macro holesThere>
  <#if drilledEarly?size gt 0>
    <@say "The pilot holes in " + fulls(drilledEarly) + " were drilled on the bench: set what is screwed on so that its holes lie over them."/>
  </#if>
</#macro>

<#-- Where the lines of slides run, for each drawer: what is measured, on which faces, and from where. -->
<#function slideOwner line><#return (slideLines?size == 1)?then("", plains(line.drawer)?remove_beginning("the ")?cap_first + ": ")></#function>
<#function lookingFaces line><#return "the " + pick(line.walls, "face", "faces") + " of " + fulls(line.walls) + " that " + pick(line.walls, "looks", "look") + " at " + (slideLines?size == 1)?then(plains(line.drawer), "it")></#function>
<#function slideHeight line><#return line.onWall + " above " + (line.floor?size gt 0)?then("the top face of " + fulls(line.floor), "the lower " + pick(line.walls, "end", "ends"))></#function>
<#macro slideHeights lines>
  <#list lines as line>
    <@say slideOwner(line) + "on " + lookingFaces(line) + ", draw a level line " + slideHeight(line) + "; on the outer " + pick(line.sides, "face", "faces") + " of " + fulls(line.sides) + ", a line " + line.onSide + " above the lower " + pick(line.sides, "edge", "edges") + "."/>
  </#list>
</#macro>
<#function slideEnd e>
  <#if e.sign == 0><#return "flush with the front " + pick(e.fronts, "edge", "edges") + " of " + fulls(e.fronts)></#if>
  <#local where = e.behind + (e.sign gt 0)?then(" behind", " before") + " the front " + e.covered?then("face", pick(e.fronts, "edge", "edges")) + " of " + fulls(e.fronts)>
  <#return e.seam?then("flush with the front " + pick(e.walls, "edge", "edges") + " of " + fulls(e.walls) + ", that is ", "") + where>
</#function>

<#-- How what hangs doors and drawers is set out, whether on trial or for good. -->
<#macro hanging item>
  <@holesThere/>
  <#switch item.kind>
    <#case "slide">
      <@say "Part the members of each slide as its maker's sheet says."/>
      <#if slideLines?size gt 0>
        <@slideHeights slideLines/>
        <#list slideEnds as e>
          <@say "Hold each case member" + (slideEnds?size gt 1)?then(" of " + plains(e.drawers), "") + " with its middle on its line and its front end " + slideEnd(e) + ". Mark its front and back holes."/>
        </#list>
        <@say "Hold each drawer member with its middle on the line of its drawer side and its front end flush with the front end of that side. Mark the same holes."/>
        <@say "Where a member has slots beside the round holes, take slots for these first screws: in a slot it can still be shifted."/>
      <#else>
        <@say "Set the case members level, both at one height, and mark their front and back holes."/>
        <@say "Set the drawer members on the drawer sides in line with them, and mark the same holes."/>
      </#if>
      <#break>
    <#case "under-slide">
      <#if slideLines?size gt 0>
        <#list slideLines as line>
          <@say slideOwner(line) + "on " + lookingFaces(line) + ", draw a level line " + slideHeight(line) + ", for the underside of " + pick(line.walls, "the runner", "the runners") + "."/>
        </#list>
      <#else>
        <@say "Draw a level line for the underside of the runners in the case."/>
      </#if>
      <@say "Set the runners on the lines, their front ends where the slide's maker says, behind the front edge, and mark their holes."/>
      <@say "Screw the catches under the front corners of the drawer boxes, and drill the holes for the hooks into their backs as the maker's sheet shows."/>
      <#break>
    <#case "concealed-hinge">
      <@say "Press a cup into each of its holes, its arm square to the edge of the door."/>
      <@say "Hold the door beside its place, open, and mark the middle of each arm on the case."/>
      <@say "Set the plates on these marks, as far behind the front edge as the hinge's maker says for a door that lies on, half on, or in the case."/>
      <#break>
    <#case "butt-hinge">
      <@say "Set each hinge out from the end of the door by about its own length, and mark round one leaf with a knife on the door's edge."/>
      <@say "Chisel the mortise to the thickness of the leaf, in thin slices from the middle to the lines."/>
      <@say pilotsFirst() + "screw one leaf to the door."/>
      <@say "Hold the door in its opening on shims, and mark the other leaf on the case."/>
      <@say "Chisel that mortise too, and drill its pilot holes; its screws go in when the door is hung."/>
      <#break>
  </#switch>
</#macro>

<#-- Screws that come with a pull are meant for one front. -->
<#macro screwLengths>
  <#list grips as g>
    <@say "Measure the screws: " + (grips?size gt 1)?then("where they go", "they go") + " through " + g.wood + " of wood and some " + g.held + " into the " + words["kind." + item.kind] + (grips?size gt 1)?then(", they are ", ", ") + "about " + g.all + " in all. Where those that come with it are shorter, buy longer ones of the same thread."/>
  </#list>
</#macro>

<#macro mounting>
  <#assign item = hardware[0]>
  <#assign noun = many(words["kind." + item.kind], item.count)>
  <#if has("mount-again")>
    <#assign slides = item.kind?ends_with("slide")>
    <@title "Put the " + slides?then("drawer slides", noun) + " back"/>
    <#if slides>
      <@say "Set each member back where it was on trial, and drive the front and the back screw into the holes of the trial, in which nothing can shift any more."/>
      <@say "Drill the pilot holes between them now, with the bits and to the depths of the trial, and drive the rest of the " + number(tried.screws) + " screws."/>
    <#elseif item.kind == "butt-hinge">
      <@say "Set each hinge back into its mortise in the door and drive its screws; those of the other leaf go in when the door is hung."/>
    <#else>
      <@say "Press each cup back into its hole and screw each plate back to its marks."/>
    </#if>
    <@with "glue-brush"/>
    <@say "See that every screw bites; where one turns freely, glue a sliver of wood into its hole first."/>
    <#return>
  </#if>
  <#switch item.kind>
    <#case "slide">
    <#case "under-slide">
      <@title "Mount the drawer slides"/>
      <@hanging item/>
      <#break>
    <#case "concealed-hinge">
    <#case "butt-hinge">
      <@title "Mount the " + noun/>
      <@hanging item/>
      <#break>
    <#case "knob">
      <@title "Mount the " + noun/>
      <@screwLengths/>
      <@say "Push the " + many("screw", item.count) + " through from inside and turn the " + noun + " on by hand. Each screw has to reach some " + grips[0].held + " into its knob, and no further than the knob's hole is deep: saw off one that is too long, or pack it with a washer."/>
      <#break>
    <#case "catch">
      <@title "Mount the " + noun/>
      <@say "Screw the catch to " + (caught.posts?size gt 0)?then(fulls(caught.posts), "what stands beside the door in the case") + (caught.ends?size == 1)?then(", " + (caught.ends?first.distance) + " from the " + (caught.ends?first.face == "top")?then("upper", "lower") + " edge of the door to their middle", (caught.ends?size gt 1)?then(", as high as listed with this step", "")) + (hardware?size == 1)?then(", with the screws that come with it: drill pilot holes a little thinner than their core, with a stop", "") + "."/>
      <#if caught.posts?size gt 0><@say "The magnet has to lie behind the door, in the plane of its back: let the catch reach past the edge of " + fulls(caught.posts) + ", on a block of offcut where its shape asks for one."/></#if>
      <@with "chalk"/>
      <@say "Set the strike on the magnet and chalk its back. Close " + (item.count gt 1)?then("each door", "the door") + " until its gap is even and its face lies flush, press it on to the strike, and open it."/>
      <@say "Screw the strike to " + fulls((caught.doors?size gt 0)?then(caught.doors, parts)) + " where it has printed."/>
      <@say "Try the door: shift the strike until it closes without force."/>
      <#break>
    <#case "levelling-foot">
      <@title "Mount the " + noun/>
      <@say backed?then("Lay the piece on its back on a blanket.", "Turn the piece upside down on a blanket.")/>
      <@say "Drill for the inserts of the " + noun + " as their maker says, with a stop, and press or screw them in."/>
      <@say "Turn every foot in by half of its way."/>
      <@say "Stand the piece up. Where it will stay, turn the feet until a level shows true both ways."/>
      <#break>
    <#case "anti-tip-strap">
      <@title "Tie the piece to the wall"/>
      <#assign several = item.count gt 1>
      <#assign straps = several?then("each strap", "the strap")>
      <@say "Before anything is drilled, read what the strap's maker says of its screws, its height and the wall: that and the local codes come before what stands here."/>
      <#if several>
        <@say "Find the studs, or solid masonry, where the piece will stand, and mark their middles on the wall. Where none lies behind one of " + fulls(parts) + ", screw a board across two studs for its strap, no thicker than there is room behind the piece."/>
      <#else>
        <@say "Find a stud, or solid masonry, where the piece will stand, and mark its middle on the wall. Stand the piece before it, with room to work behind, and carry that middle over to its back."/>
      </#if>
      <@hiddenMiddles several?then("the straps'", "the strap's") + " screws"/>
      <@say "Drill pilot holes for the strap, a little thinner than the core of its screws, with a stop."/>
      <@say "Screw " + several?then("a strap to each of ", "the strap to ") + fulls(parts) + ", near the top of the piece" + several?then("", " and at the stud, wherever along the back it is") + (covered?size gt 0)?then(", through " + fulls(covered) + ", which alone holds no screw", "") + "."/>
      <@say "Set the piece in its place and mark its upper edge on the wall."/>
      <@say "Pull the piece forward until a screwdriver finds room behind it, no farther than " + straps + " reaches."/>
      <@say "Screw " + several?then("their other ends", "its other end") + " into " + several?then("the board or ", "") + "the middle of the stud, no higher than on the piece and at most a hand's breadth lower, with the screws and the pilot hole that the strap's maker names for a stud, or with the wall plug named for masonry: plasterboard alone holds nothing."/>
      <@say "Push the piece back and try to tilt it: it must not move by more than a finger's breadth. If it does, pull it forward again, shorten " + straps + " by what was slack, and try once more."/>
      <#break>
    <#case "pull">
      <@title "Mount the " + noun/>
      <@screwLengths/>
      <@say "Push the screws through from inside, hold the " + many(words["kind." + item.kind], 1) + " in its place, and tighten them with the screwdriver."/>
      <#break>
    <#case "shelf-pin">
      <@title "Set the shelf pins"/>
      <@say "Choose one height for each shelf and push its pins in up to their collars: " + number(item.count) + " in all."/>
      <@say "Count the holes from the bottom, so that each shelf lies level."/>
      <#break>
    <#case "foot">
      <@title "Mount the " + noun/>
      <@say backed?then("Lay the piece on its back on a blanket.", "Turn the piece upside down on a blanket.")/>
      <#if item.title?matches(".*\\bnail.*", "i")>
        <@with "drill"/>
        <@with "pilot-bit"/>
        <@say "Drill a hole a little thinner and shorter than its nail for each first: a nail driven into a narrow part can split it."/>
      </#if>
      <#if item.count == total(parts)>
        <@say "Set one " + words["kind." + item.kind] + " in the middle of the underside of " + (item.count gt 1)?then("each of ", "") + fulls(parts) + " and drive it straight."/>
      <#else>
        <@say "Set one " + words["kind." + item.kind] + " in the middle of each place and drive it straight: " + number(item.count) + " in all."/>
      </#if>
      <@say "Stand the piece up again."/>
      <#break>
    <#default>
      <@title "Fit the " + plural(item.title?uncap_first)?replace("^(.*)$", (item.count == 1)?then(item.title?uncap_first, "$1"), "r")/>
      <#list linings as l>
        <@say "Cut it " + l.length + " long and " + l.width + " wide: as large as " + fulls(l.on) + " is between the walls, less " + l.free + " at each, so that it lies flat."/>
      </#list>
      <#if shares?size gt 1>
        <@say "Fit " + number(item.count) + ", as noted: " + joined(shares?map(s -> number(s.count) + " to " + fulls(s.parts))) + "."/>
      <#else>
      <@say "Fit " + number(item.count) + ((said?size gt 0 && parts?size gt 1)?then(", as noted, between ", " to ")) + fulls(parts) + (said?size == 0)?then(", by the sheet that came with it where there is one", "") + "."/>
      </#if>
      <#if item.sticks>
        <#if item.overWax>
          <@with "mineral-spirits"/>
          <@with "lint-free-cloth"/>
        </#if>
        <@say "Wait until the finish is hard to the nail, for glue that sticks to a soft coat lifts it." + item.overWax?then(" Nothing sticks to wax: first wipe it off each place with a cloth and a little mineral spirits, and let that dry.", " First wipe each place free of dust and grease.")/>
      </#if>
  </#switch>
  <#if hardware?size gt 1 && item.kind != "butt-hinge">
    <@say pilotsFirst() + "drive the " + number(hardware[1].count) + " " + many("screw", hardware[1].count) + "."/>
  </#if>
</#macro>

<#function takenHow p>
  <#if p.hand == ""><#return ""></#if>
  <#return (p.hand == "drawn")?then(" as drawn", " mirrored")>
</#function>
<#-- The maker's own words first: they bear on what follows; what they say of the time after the glue comes last. -->
<#-- What hangs on one line of glue until something else is on. -->
<#list careful as c>
! Handle with care until step ${c.step}: ${fulls(c.held)} ${pick(c.held, "is", "are each")} held by one line of glue until ${fulls(c.stiffener)} ${pick(c.stiffener, "is", "are")} on. Do not turn the piece over, lean on ${pick(c.held, "it", "them")} or lift by ${pick(c.held, "it", "them")}.
</#list>
<#if heavyUp>
! ${words["caution.turning"]}
</#if>
<#assign afterwards = said?filter(each -> each?matches(".*\\b(when|once|after) the glue (is|has) (hard|dry|cured|set|hardened).*", "i"))>
<#if said?filter(each -> each?matches(".*\\b[Ss]crape\\b.*"))?size gt 0><@with "scraper"/></#if>
<#list said?filter(each -> !afterwards?seq_contains(each)) as each>
<@say words["step.note"] + " " + each/>
<#if verb == "fit" && each?matches(".*\\b[Gg]lue (only|the|it|them|one)\\b.*")><@with "glue-brush"/></#if>
</#list>
<#assign forOne = (each![])?size gt 0>
<#if forOne && !alike>
<@say "Do all this for each of the " + number(each?size) + ", one after the other: " + each?map(unit -> plains(unit.name) + ", of " + lettersOf(unit.marks))?join("; ") + ". They are alike but for the height of their parts."/>
<#elseif forOne>
<@say "Do all this for each of " + plains(whole) + ", one after the other."/>
<#elseif total(inUnits) gt 1 && !has("fit-front")>
<@say "Do this for " + plains(inUnits) + ", which are alike" + alike?then("", " but for the height of their parts: keep those of one together, by their marks") + "."/>
</#if>
<#if oneShown && (forOne || total(inUnits) gt 1) && !has("fit-front")>
<@say "The picture shows the first of them."/>
</#if>
<#if verb == "fit" && (eachMinutes!"") != "">
<@say "At about " + eachMinutes + " each, spread glue on one only and clamp it before the next."/>
</#if>
<#if verb == "fit" && (turns!1) gt 1>
<@say "Glue up " + number(atOnce) + " at a time, for the shop has " + number(shopClamps) + " clamps: begin the next when the clamps of the first come off."/>
</#if>
<#if (mirrorImages![])?size gt 0>
<@say "Build " + plains(mirrorImages) + " as mirror images of each other: lay each part on the side where the picture shows it."/>
<#if mirrorTaken?size gt 0>
<@say mirrorTaken?map(u -> plains(u.name) + " takes " + joined(u.parts?map(p -> full(p) + takenHow(p))))?join("; ") + "."/>
</#if>
</#if>
<#if clampsOff?size gt 0>
<@say "Take off the clamps of step" + (clampsOff?size gt 1)?then("s ", " ") + joined(clampsOff?map(n -> n?string)) + standsUp?then(" and stand the piece up again", "") + "."/>
</#if>
<#switch verb>
  <#case "choose"><@choosing/><#break>
  <#case "mark"><@markingParts/><#break>
  <#case "mill"><@milling/><#break>
  <#case "size"><@sizing/><#break>
  <#case "blank"><@blanking/><#break>
  <#case "keep"><@keeping/><#break>
  <#case "rejoin"><@rejoining/><#break>
  <#case "cut"><@cutting/><#break>
  <#case "drill"><@drilling/><#break>
  <#case "dry-fit"><@dryFitting/><#break>
  <#case "trim"><@shaping/><#break>
  <#case "trial-fit"><@trying/><#break>
  <#case "sand"><@sanding/><#break>
  <#case "pre-finish"><@preFinishing/><#break>
  <#case "fit"><@fitting/><#break>
  <#case "mount"><@mounting/><#break>
  <#case "test"><@testing/><#break>
  <#case "finish"><@finishing/><#break>
</#switch>
<#list afterwards as each>
<@say words["step.note"] + " " + each/>
</#list>
