<#ftl output_format="plainText">
<#--
  Die Worte eines Schrittes auf Deutsch. Zeilen mit "# " am Anfang sind der Titel, mit "! " ein
  Sicherheitshinweis, mit "- " je ein Satz, mit "@ " der Schlüssel eines Werkzeugs, das ein Satz über die
  seines Gewerks hinaus braucht. Was hereinkommt, sind dieselben Werte wie in text.ftl; Makros und
  Funktionen heißen wie dort. Namen von Teilen stehen ohne Artikel und Beugung: Name Ort × Zahl (Zeichen).
-->
<#function joined list>
  <#if list?size == 0><#return ""></#if>
  <#if list?size == 1><#return list[0]></#if>
  <#local inside = list?filter(each -> each?contains(" und "))?size gt 0>
  <#return list[0..list?size - 2]?join(", ") + inside?then(" sowie ", " und ") + list?last>
</#function>
<#assign numbers = ["kein", "1", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf"]>
<#function number count><#return (count < numbers?size)?then(numbers[count], count?string)></#function>
<#function place p><#return p.places?map(each -> words["place." + each])?join(" ")></#function>
<#-- Zahlen, wie man sie liest: 1 bis 3, 1 und 2, 1, 2 und 5. -->
<#function counted p>
  <#local all = p.numbers>
  <#if all?size gt 2 && all?last - all?first == all?size - 1><#return all?first + " bis " + all?last></#if>
  <#return joined(all?map(n -> n?string))>
</#function>
<#-- Ein Teil in einem Titel: Seite links, Fuß × 4, Schubkasten 1 bis 3. -->
<#function plain p>
  <#if p.numbers?size gt 0 && !p.numbers?seq_contains(0)><#return p.title + " " + counted(p)></#if>
  <#local named = (p.title + " " + place(p))?trim>
  <#return named + (p.count gt 1)?then(" × " + p.count, "")>
</#function>
<#-- Ein Teil in einem Satz, mit seinem Zeichen: Seite links (A), Trennwand × 2 (C). -->
<#function full p><#return plain(p) + (p.mark == "")?then("", " (" + p.mark + ")")></#function>
<#-- Was unter einem Namen zwei Größen hat, wird einmal genannt. -->
<#function plains list>
  <#local names = []>
  <#list list as p>
    <#local like = list?filter(other -> plain(other) == plain(p))>
    <#local name = (like?size gt 1 && p.numbers?size == 0)?then(plain(p + {"count": total(like)}), plain(p))>
    <#if !names?seq_contains(name)><#local names = names + [name]></#if>
  </#list>
  <#return joined(names)>
</#function>
<#-- Was sich nur in der Größe unterscheidet, geht unter einem Namen mit allen Zeichen zusammen. -->
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
<#-- Alle Teile des Schrittes mit ihren Zeichen: A × 2, B und C. -->
<#function letters>
  <#return joined(marks?map(p -> p.mark + ((p.count gt 1)?then(" × " + p.count, ""))))>
</#function>
<#-- Der Name eines Schnitts, wie ihn auch die Zeichnungen nennen. -->
<#function cutName term count>
  <#local key = "cut." + term?replace(" ", "-")>
  <#return (count == 1)?then(words[key]!term, words[key + ".many"]!words[key]!term)>
</#function>
<#function total list><#local sum = 0><#list list as p><#local sum = sum + p.count></#list><#return sum></#function>
<#function pick list one many><#return (total(list) == 1)?then(one, many)></#function>
<#-- A length of common practice: in the unit that comes first, the other beside it where both are told. -->
<#function usual inches millimetres>
  <#local first = inch?then(inches, millimetres)>
  <#return first + both?then(" [" + inch?then(millimetres, inches) + "]", "")>
</#function>
<#function has trait><#return traits?seq_contains(trait)></#function>
<#-- Eine Zahl von Beschlägen oder dergleichen: Schraube × 4; einer allein ohne Zahl. -->
<#function many noun count><#return (count == 1)?then(noun, noun + " × " + count)></#function>
<#-- Was mehr als einmal gebaut wird, steht vor dem, was damit geschieht: Schubkasten 2: Front anleimen. -->
<#macro title text># ${(inUnits?size == 1 && !has("fit-front"))?then(plains(inUnits)?cap_first + ": " + text, text?cap_first)}
</#macro>
<#macro say text>- ${text?cap_first}
</#macro>
<#macro with tool>@ ${tool}
</#macro>
<#-- Ein Titel nennt bis zu zwei Arten von Teilen, und von mehr, wie viele es sind. -->
<#function someParts nominative=false>
  <#local names = merged(parts?map(p -> p + {"numbers": []}))>
  <#if names?size lte 2><#return plains(names)></#if>
  <#local rest = total(names[2..])>
  <#return names[0..1]?map(p -> plain(p))?join(", ") + " und " + (rest == 1)?then(nominative?then("ein weiteres Teil", "einem weiteren Teil"), number(rest) + nominative?then(" weitere Teile", " weiteren Teilen"))>
</#function>
<#-- Beschläge in der Mehrzahl, wie in Löcher für Schrauben. -->
<#function pluralOf kind>
  <#local all = {"wood-screw": "Schrauben", "pocket-screw": "Taschenlochschrauben", "brad": "Stifte", "slide": "Schubkastenführungen", "under-slide": "Schubkastenführungen", "top-fastener": "Plattenhalter", "rotating-fastener": "Plattenhalter", "pull": "Griffe", "knob": "Knöpfe", "catch": "Schnäpper", "concealed-hinge": "Topfbänder", "butt-hinge": "Scharniere", "shelf-pin": "Bodenträger", "foot": "Gleiter", "levelling-foot": "Stellfüße", "anti-tip-strap": "Kippsicherungen", "dowel": "Dübel", "biscuit": "Flachdübel", "loose-tenon": "lose Zapfen", "plug": "Querholzpfropfen", "washer": "Unterlegscheiben", "button": "Nutklötze"}>
  <#return all[kind]!"Beschläge">
</#function>
<#-- Wie viele Beschläge, wie man es liest: drei Schrauben; einer allein ohne Zahl. -->
<#function howMany kind count><#return (count == 1)?then(words["kind." + kind], number(count) + " " + pluralOf(kind))></#function>
<#function inParts><#return " in " + someParts()></#function>
<#function ofParts><#return " von " + someParts()></#function>
<#function onParts><#return " an " + someParts()></#function>
<#function lettersOf list><#return joined(list?map(p -> p.mark + ((p.count gt 1 || p.counted!false)?then(" × " + p.count, ""))))></#function>

<#-- Ein Holz, wie man danach fragt. -->
<#function woodOf s><#return s.material + s.quarter?then(" im Riftschnitt", "")></#function>

<#function stuffOf s>
  <#if !s.bought?has_content><#return woodOf(s) + " " + s.thick></#if>
  <#return woodOf(s) + " (sägerau " + s.bought + s.layers?then(", in Lagen zu verleimen)", ", gehobelt " + s.thick + ")")>
</#function>

<#macro choosing>
  <#assign solids = stocks?filter(s -> !s.sheet)>
  <#assign sheets = stocks?filter(s -> s.sheet)>
  <@title (solids?size == 0)?then("Platten", (sheets?size == 0)?then("Bretter", "Bretter und Platten")) + " auswählen"/>
  <#if solids?size gt 0>
    <@say "Gerade, trockene Bretter auswählen, alle nebeneinander auslegen und Risse, lose Äste, Splint und krumme Stellen mit Kreide umranden: Aus diesen Stellen darf kein Teil geschnitten werden."/>
    <#list solids as s>
      <#if s.laidOut>
        <@say "Für " + stuffOf(s) + (s.onHand?size gt 0)?then(" zuerst nehmen, was vorhanden ist (" + joined(s.onHand) + "), und", "") + " Bretter nach den Zuschnittplänen nehmen: " + lettersOf(s.marks) + "." + s.flawed?then(" Prüfen, dass ihre schlechten Stellen noch da liegen, wo die Zuschnittpläne sie zeigen.", "")/>
      <#else>
        <@say "Für " + stuffOf(s) + " zuerst Platz für die größten Rohlängen suchen: " + s.longest?map(l -> joined(l.blanks?map(b -> b.together?then(lettersOf(b.marks) + " in einem Stück", b.mark))) + " (" + l.length + ")")?join(", dann ") + (s.others?then("; die kürzeren daneben und in dem, was übrig bleibt", "")) + "."/>
      </#if>
    </#list>
    <#if seen?size gt 0>
      <@say "Das reinste Holz mit der ruhigsten Maserung für das aufheben, was nach vorn oder oben zeigt: " + lettersOf(seen) + "."/>
    </#if>
  </#if>
  <#list matches as m>
    <@say fulls(m.parts) + " aus " + m.sheet?then("einer Platte", "einem Brett") + " nehmen" + m.inRow?then(m.endToEnd?then(", hintereinander", ", nebeneinander") + " in der Reihenfolge, in der man sie sehen wird, damit die Maserung über sie durchläuft", ", damit Maserung und Farbe zusammenpassen") + "."/>
  </#list>
  <#if sheets?size == 1>
    <#local s = sheets[0]>
    <@say s.material + " von " + s.thick + " an mehreren Stellen der Kanten mit dem Messschieber messen: Die Nuten und Falze sind für " + s.thick + " gemacht."/>
    <@say "Weicht die Dicke um mehr als ein oder zwei Blatt Papier ab, die Werkzeuge für ihre Nuten und Falze nach einem Reststück einstellen, nicht nach der Zahl."/>
  <#elseif sheets?size gt 1>
    <#local some = []>
    <#list sheets as s><#local some = some + [s.material + " von " + s.thick]></#list>
    <@say "Platten an mehreren Stellen der Kanten mit dem Messschieber messen: Die Nuten und Falze sind für " + joined(some) + " gemacht."/>
    <@say "Wo eine Platte davon um mehr als ein oder zwei Blatt Papier abweicht, die Werkzeuge für ihre Nuten und Falze nach einem Reststück einstellen, nicht nach der Zahl."/>
  </#if>
  <@say "Zeichen mit Kreide auf " + (solids?size == 0)?then("die Platten", (sheets?size == 0)?then("die Bretter", "Bretter und Platten")) + " schreiben, wo die Teile herkommen, mit einem Pfeil in Faserrichtung."/>
</#macro>

<#assign facesWay = {"front": "nach vorn", "back": "nach hinten", "top": "nach oben", "bottom": "nach unten", "left": "nach links", "right": "nach rechts"}>
<#assign twinAt = {"left": "linke", "right": "rechte", "front": "vordere", "back": "hintere", "bottom": "untere", "top": "obere"}>
<#assign sideNames = {"edge": "Kante", "end": "Ende", "face": "Fläche"}>
<#-- Eine Seite im Dativ, wie die Zeichnungen sie nennen: der linken Fläche, der Oberseite, dem rechten Ende. -->
<#function sideOf kind face>
  <#if kind == "face" && ["top", "bottom"]?seq_contains(face)><#return "der " + (face == "top")?then("Oberseite", "Unterseite")></#if>
  <#return (kind == "end")?then("dem ", "der ") + twinAt[face] + "n " + sideNames[kind]>
</#function>
<#function theFace face><#return "die " + ((face == "top")?then("Oberseite", (face == "bottom")?then("Unterseite", twinAt[face] + " Fläche")))></#function>

<#function laidOutSides>
  <#local sides = []>
  <#list laidOut as l><#list l.edges as e><#if !sides?seq_contains(e.side)><#local sides = sides + [e.side]></#if></#list></#list>
  <#return ["edge", "end", "face"]?filter(side -> sides?seq_contains(side))?map(side -> sideNames[side])?join(" oder ")?replace("Kante oder Ende oder", "Kante, Ende oder")>
</#function>
<#function facingOf f><#return joined(f.marks?map(m -> lettersOf([m])) + f.onSide?map(m -> lettersOf([m]) + " " + words["place." + f.way]) + f.parts?map(p -> full(p)))></#function>
<#macro markingParts>
  <@title "Fläche und Kante anzeichnen: " + someParts(true)/>
  <#assign open = facing?filter(f -> !f.setOut && facesWay[f.way]??)>
  <#if open?size gt 0>
    <@say "Die bessere Fläche so drehen, dass man sie sieht, und das Flächenzeichen darauf setzen: " + open?map(f -> facingOf(f) + " " + facesWay[f.way])?join("; ") + "."/>
  </#if>
  <#list facingDrawn as d>
    <@say "Bei " + lettersOf(d.marks) + " das Flächenzeichen auf " + theFace(d.face) + " setzen, wie gezeichnet: Jedes wird an seinem Platz gedreht."/>
  </#list>
  <#list facing?filter(f -> f.setOut) as f>
    <@say "Bei " + facingOf(f) + " das Flächenzeichen auf " + theFace(f.way) + " setzen: Von ihr aus werden Verbindungen angerissen, und von außen sieht man keine Fläche."/>
  </#list>
  <#list facing?filter(f -> !f.setOut && !facesWay[f.way]??) as f>
    <@say "Bei " + facingOf(f) + " das Flächenzeichen auf die bessere Fläche setzen: " + (f.way == "inside")?then("Man sieht beide Flächen im Inneren des Möbels.", "Von außen sieht man keine Fläche.")/>
  </#list>
  <@say "Daneben den Buchstaben schreiben, mit einem Pfeil zu dem Ende oder der Kante, die in der Teilzeichnung oben liegt" + several?then("; wo gleiche Teile eigene Plätze haben, auch den Platz, etwa vorn links", "") + "."/>
  <#list handed as h>
    <@say "Teile " + h.mark + " paarweise legen, Flächenzeichen oben und gleiche Kanten zusammen: " + h.same + " wie gezeichnet und " + h.mirrored + " gespiegelt. Auf jedes links oder rechts schreiben, bevor etwas geschnitten wird."/>
  </#list>
  <#if laidOut?size gt 0>
    <@say "Kantenzeichen auf " + laidOutSides() + " setzen, wo die Verbindungen angerissen werden, wie in der Teilzeichnung genannt: " + laidOut?map(l -> (joined(l.marks) + " an " + joined(l.edges?map(e -> sideOf(e.side, e.face))))?replace(" an dem ", " am "))?join("; ") + (laidOut?map(l -> l.marks?size)?join("+")?eval != marks?size)?then("; an den anderen an der besten Längskante, die bleibt", "") + "."/>
  <#else>
    <@say "Kantenzeichen neben dem Flächenzeichen auf die beste Längskante setzen, die bleibt."/>
  </#if>
  <#if fromFaceMark?size gt 0>
    <@say "Die Verbindungen von " + joined(fromFaceMark) + " werden auch vom Flächenzeichen aus angerissen."/>
  </#if>
  <#list fromOtherFace as o>
    <@say "Bei " + joined(o.marks) + " auch auf " + theFace(o.face) + ", dem Flächenzeichen gegenüber, ein Kreuz setzen: Von ihr aus werden Verbindungen angerissen."/>
  </#list>
  <@say "Nur von angezeichneten Flächen und Kanten aus anreißen und messen und sie an Anschlag und Führung halten."/>
</#macro>

<#-- Wie die Lamellen von Leimholz gedreht werden. -->
<#macro ringsOfStaves>
  <#if alternated?size gt 0>
        <@say "Für " + fulls(alternated) + " jedes zweite Brett über die Enden wenden, Unterseite nach oben, Enden vertauscht: So wird es in derselben Richtung gehobelt, die Jahrringe an den Enden sind abwechselnd nach oben und unten gewölbt, benachbarte Bretter schüsseln sich gegeneinander, und die Fläche bleibt im Ganzen eben."/>
  </#if>
  <#if matched?size gt 0>
    <@say "Bretter für " + fulls(matched) + " nach ihrem Aussehen drehen, wie immer die Jahrringe an den Enden gewölbt sind" + quarterSawn?then(": Im Riftschnitt stehen sie aufrecht und schüsseln nicht", ". Solches Leimholz kann sich in einem Bogen schüsseln, darum nicht lange lose liegen lassen") + "."/>
  </#if>
</#macro>

<#-- Kurze Teile bleiben hintereinander in einem Rohling. -->
<#function inLengths><#return (longBlanks?size == 0)?then("", " (" + longBlanks?map(b -> b.length)?join(", ") + ")")></#function>
<#macro longBlanksTold>
  <#if longBlanks?size gt 0>
    <@say "Rohlänge in einem Stück: " + longBlanks?map(b -> lettersOf(b.marks) + " " + b.length)?join("; ") + "."/>
  </#if>
</#macro>

<#-- Hand- und Bandsäge brauchen weder ebene Fläche noch gerade Kante; von der Tischkreissäge spricht die Warnung. -->
<#macro roughSawing>
  <@with "bandsaw"/>
</#macro>

<#macro laminating>
  <@title plains(parts) + ": Lagen verleimen"/>
  <@say "Bretter für die Lagen auf die Rohmaße der Stückliste ablängen, dann auftrennen."/>
  <@roughSawing/>
  <#if short?size gt 0>
    <@say lettersOf(short) + " in einem langen Rohling zusammenlassen, auch beim Verleimen, bis auf Maß geschnitten wird: Ein kurzes Stück ist in Abricht- und Dickenhobelmaschine nicht sicher."/>
    <@longBlanksTold/>
  </#if>
  <#list layered as it>
    <@say full(it.part) + pick([it.part], "", " je") + " aus " + number(it.count) + " Lagen machen, gehobelt mindestens " + it.thick + " dick, besser " + it.thicker + ": Das verleimte Paket wird noch einmal gehobelt" + (it.staves gt 1)?then(", und jede Lage aus " + number(it.staves) + " Lamellen, gefügt mindestens " + it.width + " breit", "") + "."/>
  </#list>
  <#if layered?filter(it -> it.staves gt 1)?size gt 0>
    <@ringsOfStaves/>
    <@say "Zuerst die Lamellen jeder Lage Kante an Kante verleimen, den Leim " + cured + " trocknen lassen und die Lage noch einmal hobeln."/>
  </#if>
  <@say "Eine Fläche jedes Bretts abrichten und die andere parallel dazu hobeln, alle Lagen eines Teils auf eine Dicke und am Tag des Verleimens: Frische Flächen halten am besten."/>
  <@say "Lagen aufeinanderlegen, Faser in einer Richtung, die beiden äußeren mit der Kernseite nach außen: Trocknet das Holz, drückt es so die Ränder der Leimfugen zusammen."/>
  <@say "Trocken in den Zwingen probieren: Keine Fuge darf an einer Kante offen stehen."/>
  <@say "Auf jede Fläche, die auf eine andere trifft, einen gleichmäßigen Leimfilm geben, die Lagen an einer Kante bündig legen und zwischen geraden Zulagen spannen, von der Mitte zu den Enden, Zwingen abwechselnd an beiden Kanten."/>
  <@panelClamps usual("4 in", "100 mm")/>
  <@say "Vor dem Hobeln insgesamt " + cured + " ruhen lassen; inzwischen mit den nächsten Schritten beginnen."/>
</#macro>

<#-- Wie viele Zwingen Leimholz oder ein Paket von Lagen braucht, und wann sie abkommen. -->
<#macro panelClamps spacing>
  <#local long = panelClamped?filter(p -> p.count gt 2)?size gt 0>
  <@say joined(panelClamped?map(p -> number(p.count) + (p.count == panelClamped[0].count)?then(" Zwingen", "") + " für " + (p.shared)?then((p.panels == 1)?then("das lange Stück aus ", "jedes lange Stück aus "), pick(p.parts, "", "je eines von ")) + fulls(p.parts))) + " setzen: je eine " + usual("2 in", "50 mm") + " von jedem Ende" + long?then(", die übrigen gleichmäßig dazwischen, höchstens " + spacing + " auseinander", "") + "."/>
  <#if clampsShort gt 0>
    <@say "Die Werkstatt hat " + number(shopClamps) + " davon: " + number(clampsShort) + " weitere leihen, bevor Leim aufgetragen wird."/>
  </#if>
  <#if panelRounds?size gt 0>
    <@say "Die Werkstatt hat " + number(shopClamps) + " Zwingen, darum nacheinander verleimen, sobald sie frei sind: zuerst " + panelRounds?map(r -> fulls(r))?join(", dann ") + "."/>
  <#elseif turns gt 1>
    <@say "Leim jeweils nur für " + (atOnce == 1)?then("eines", number(atOnce)) + " auftragen, denn die Werkstatt hat " + number(shopClamps) + " Zwingen: das nächste beginnen, wenn die Zwingen vom ersten abkommen."/>
  <#elseif panelCount gt 1>
    <@say "Erst eines mit Leim bestreichen und spannen, dann das nächste."/>
  </#if>
  <@say "Zwingen " + (turns gt 1)?then("jedes Mal ", "") + clampWait + " angesetzt lassen, oder so lange, wie das Etikett des Leims sagt."/>
</#macro>

<#-- Was für die Abrichthobelmaschine zu breit ist, wird vor dem Dickenhobeln anders eben (common practice). -->
<#macro wideForJointer>
  <#if overJointer?size gt 0>
    <@with "hand-plane"/>
    <@with "shims"/>
    <@say lettersOf(overJointer) + pick(overJointer, " ist", " sind") + " sägerau breiter als " + (jointer == "")?then("eine übliche Abrichthobelmaschine von " + usual("6 in", "150 mm"), "die Abrichthobelmaschine von " + jointer) + ": von Hand eben hobeln, oder auf einer ebenen Unterlage durch die Dickenhobelmaschine schicken, unterlegt, wo das Brett kippeln würde; oder auftrennen, beide Hälften abrichten und wieder zusammenleimen."/>
  </#if>
</#macro>

<#macro milling>
  <#if has("mill-layers")>
    <@laminating/>
  <#elseif has("mill-panel")>
    <@title "Bretter verleimen: " + plains(parts)/>
    <@say "Bretter für " + fulls(parts) + " nebeneinanderlegen und verschieben, bis Farbe und Maserung ineinander übergehen; ein großes Kreidedreieck darüber zeichnen, damit jedes seinen Platz wiederfindet."/>
    <#list staved as it>
      <@say number(it.count) + " Lamellen für " + pick([it.part], "", "je eines von ") + full(it.part) + " auf das Rohmaß der Stückliste sägen; gefügt muss jede noch mindestens " + it.width + " breit sein."/>
    </#list>
    <#if short?size gt 0>
      <@say "Bretter für " + lettersOf(short) + " " + (shortTogether?size == 0)?then("länger lassen als " + pick(short, "das Teil", "die Teile"), "in " + (longBlanks?size == 1)?then("einer langen Fläche lassen, hintereinander", "langen Flächen lassen, die von einer Breite hintereinander") + (shortAlone?size == 0)?then("", ", die für " + lettersOf(shortAlone) + " länger als das Teil")) + ", vom Abrichten bis zum Verleimen und Dickenhobeln, bis " + pick(short, "das Teil auf Maß geschnitten wird", "die Teile auf Maß geschnitten werden") + ": Ein kurzes Stück ist in Abricht- und Dickenhobelmaschine nicht sicher."/>
    </#if>
    <#if staved?size lt parts?size>
      <@say (staved?size gt 0)?then("Die übrigen", fulls(parts)) + " aus Brettern machen, die nicht breiter sind, als Abricht- und Dickenhobelmaschine fassen, und den Rohzuschlag stehen lassen."/>
    </#if>
    <@roughSawing/>
    <@ringsOfStaves/>
    <@say "Eine Fläche jedes Bretts abrichten."/>
    <@wideForJointer/>
    <#if tooWide?size gt 0>
      <@say "Bretter für " + fulls(tooWide) + " etwas dicker als " + thickness + " hobeln, um " + usual("1/32 in", "1 mm") + ": Verleimt ist die Fläche breiter, als die Dickenhobelmaschine fasst, und das Ebnen der Fugen nimmt den Rest."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say (tooWide?size gt 0)?then("Die anderen Bretter", "Bretter") + " etwas dicker als " + thickness + " hobeln."/>
    </#if>
    <@say "Bretter wieder in ihrer Reihenfolge auslegen und das Dreieck auf den gehobelten Flächen neu zeichnen."/>
    <@say "Kanten fügen, die zusammenkommen, bis kein Licht durchscheint."/>
    <#list inGroups as it>
      <@say fulls(it.parts) + " in zwei Gängen verleimen, nicht " + number(it.seams) + " Fugen auf einmal: zuerst Gruppen von " + number(it.each) + " Brettern, die die Dickenhobelmaschine fasst; diese hobeln, neu fügen und zu zweit zusammenleimen."/>
    </#list>
    <@say "Bretter Kante an Kante auf einem ebenen Bett von Zwingen verleimen, Zwingen abwechselnd darunter und darüber."/>
    <@panelClamps usual("12 in", "300 mm")/>
    <@say "Vor dem " + (tooWide?size == 0)?then("Hobeln", (tooWide?size == parts?size)?then("Ebnen", "Hobeln oder Ebnen")) + " insgesamt " + cured + " ruhen lassen; inzwischen mit den nächsten Schritten beginnen."/>
  <#else>
    <@title woodOf(stock) + " auf " + thickness + " hobeln"/>
    <#assign single = marks?filter(m -> !short?map(s -> s.mark)?seq_contains(m.mark))>
    <#if single?size gt 0>
      <@say pick(single, "Rohling", "Rohlinge") + " auf die Rohmaße der Stückliste ablängen, dann auftrennen: " + lettersOf(single) + "."/>
    </#if>
    <#if shortTogether?size gt 0>
      <@say lettersOf(shortTogether) + " als " + (longBlanks?size == 1)?then("einen langen Rohling sägen, hintereinander", "lange Rohlinge sägen, die von einer Rohbreite hintereinander in einem") + inLengths() + ", und ganz lassen, bis die Teile auf Maß geschnitten werden: Ein kurzes Stück ist in Abricht- und Dickenhobelmaschine nicht sicher."/>
    </#if>
    <#if shortAlone?size gt 0>
      <@say lettersOf(shortAlone) + " " + pick(shortAlone, "als längeren Rohling", "einzeln als längere Rohlinge") + " sägen und ganz lassen, bis " + pick(shortAlone, "das Teil auf Maß geschnitten wird", "die Teile auf Maß geschnitten werden") + (shortTogether?size == 0)?then(": Ein kurzes Stück ist in Abricht- und Dickenhobelmaschine nicht sicher.", ", wie diese.")/>
    </#if>
    <@roughSawing/>
    <@say "Eine Fläche " + (blanks == 1)?then("des", "jedes") + " Rohlings abrichten."/>
    <@wideForJointer/>
    <@say "Eine Kante rechtwinklig zu dieser Fläche fügen."/>
    <@say (blanks == 1)?then("Ihn auf " + thickness + " hobeln.", "Alle Rohlinge in einer Einstellung auf " + thickness + " hobeln.")/>
    <@say "Zeichen mit Kreide auf " + (blanks == 1)?then("den", "jeden") + " Rohling schreiben."/>
  </#if>
</#macro>

<#macro sizing>
  <#if has("size-kept")><@trimming/><#return></#if>
  <#if has("size-rejoined")><@resizing/><#return></#if>
  <#if has("size-panel") || has("size-large-panel")>
    <@title plains(parts) + " hobeln und auf Maß schneiden"/>
    <@say "Ausgetretenen Leim von " + fulls(parts) + " abschaben."/>
    <#if tooWide?size gt 0>
      <@say "Fugen von " + fulls(tooWide) + " mit Handhobel, breiter Zylinderschleifmaschine oder Oberfräse auf Schlitten bis auf " + thickness + " ebnen."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say (tooWide?size gt 0)?then("Die übrigen auf ", "Auf ") + thickness + " hobeln."/>
    </#if>
    <#if has("size-large-panel")>
      <@with "long-battens"/>
      <@say fulls(largePanels) + " auf Leisten legen, zum Heben und Wenden zu zweit: Eine Fläche dieser Größe wird über keine Maschine geführt."/>
      <@say "Eine Längskante mit der Tauchsäge gerade schneiden oder mit der Oberfräse an einer Richtlatte; die andere parallel dazu und beide Enden rechtwinklig zu ihnen, auf dieselbe Weise."/>
    </#if>
    <#if has("size-panel")>
      <@say has("size-large-panel")?then("Bei den anderen eine ", "Eine ") + "Kante gerade fügen, dann mit dieser Kante am Anschlag auf Breite schneiden."/>
      <#if short?size gt 0>
        <@say "Die lange Fläche für " + lettersOf(short) + " jetzt in ihre Teile ablängen, etwas länger als das Maß."/>
      </#if>
      <@say "Beide Enden mit dem Ablängschlitten rechtwinklig schneiden."/>
    </#if>
  <#elseif has("size-layers")>
    <@title plains(parts) + " hobeln und auf Maß schneiden"/>
    <@say "Ausgetretenen Leim von " + fulls(parts) + " abschaben."/>
    <@say "Eine Fläche abrichten, dann eine Kante rechtwinklig dazu fügen."/>
    <#if tooWide?size gt 0>
      <@say fulls(tooWide) + " mit Handhobel, breiter Zylinderschleifmaschine oder Oberfräse auf Schlitten auf " + thickness + " ebnen."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say (tooWide?size gt 0)?then("Die übrigen auf ", "Auf ") + thickness + " hobeln, abwechselnd von jeder Fläche etwas, damit die äußeren Lagen gleich bleiben."/>
    </#if>
    <@say "Mit der gefügten Kante am Anschlag auf Breite schneiden."/>
    <@say "Ein Ende rechtwinklig schneiden, dann gegen einen Anschlag ablängen" + (total(marks) == 1)?then(".", ", damit gleiche Teile gleich werden.")/>
  <#elseif has("size-sheet")>
    <@title stock.material + " " + stock.thick + " auf Maß schneiden"/>
    <@say "Den nummerierten Schnitten des Zuschnittplans von 1 an folgen: Sie geben " + (total(marks) == 1)?then("dem", "jedem") + " Teil sein Fertigmaß, nichts wird zweimal geschnitten."/>
    <@say "Die ersten Schnitte, solange die Stücke groß sind, mit der Tauchsäge machen; die Platte eben auf Unterlagen legen, die beide Seiten des Schnitts tragen."/>
    <@say "Die übrigen an der Tischkreissäge machen, sobald die Stücke dort zu handhaben sind: Anschlag nach dem Zuschnittplan einstellen und eine gerade, saubere Kante daran halten."/>
    <@say "Wo die nächsten Schnitte dieselbe Einstellung haben, sie machen, bevor der Anschlag verstellt wird."/>
    <@say "Zeichen mit Kreide auf " + (total(marks) == 1)?then("das", "jedes") + " Teil schreiben, wie es von der Säge kommt."/>
  <#else>
    <@title (total(marks) == 1)?then("Teil", "Teile") + " aus " + woodOf(stock) + " " + stock.thick + " auf Maß schneiden"/>
    <@say (blanks == 1)?then("Den", "Jeden") + " Rohling mit der gefügten Kante am Anschlag auf Breite schneiden."/>
    <@say "Ein Ende rechtwinklig schneiden."/>
    <@say "Gegen einen Anschlag ablängen" + (total(marks) == 1)?then(".", ", damit gleiche Teile gleich werden.")/>
  </#if>
  <#if has("size-sheet")>
    <@say letters() + " mit den Maßen bei diesem Schritt vergleichen."/>
  <#else>
    <@say letters() + " auf die Maße bei diesem Schritt schneiden."/>
  </#if>
  <#if made?size gt 0>
    <@say fulls(made) + " auf dem Schlitten gegen einen Anschlag trennen, unter einem Niederhalter: Sie sind zu klein, um von Hand am Parallelanschlag geführt zu werden."/>
  </#if>
  <#if has("size-panel") || has("size-large-panel")>
    <@with "tape"/>
    <@say "Dann " + pick(parts, "", "an jedem ") + "die beiden Diagonalen messen: Beide sollen so lang sein wie bei diesem Schritt angegeben."/>
  </#if>
</#macro>

<#-- Bretter, aus denen Stücke geschnitten werden, die bleiben: Rohling, zerlegen, leimen, Maß, einpassen. -->
<#function blanksOf list><#return (list?size == 1 && list[0].count == 1)?then("Rohling von ", "Rohlinge von ")></#function>

<#macro blanking>
  <@title blanksOf(allBoards) + plains(allBoards) + " auf Maß schneiden"/>
  <#if has("blank-panel")>
    <@say "Ausgetretenen Leim von " + fulls(allBoards) + " abschaben."/>
    <#if tooWide?size gt 0>
      <@say "Fugen von " + fulls(tooWide) + " mit Handhobel, breiter Zylinderschleifmaschine oder Oberfräse auf Schlitten bis auf " + thickness + " ebnen."/>
    </#if>
    <#if tooWide?size lt parts?size>
      <@say (tooWide?size gt 0)?then("Die übrigen auf ", "Auf ") + thickness + " hobeln."/>
    </#if>
  <#elseif has("blank-sheet")>
    <@say "Er kommt mit den anderen Teilen von seiner Platte, nach den nummerierten Schnitten des Zuschnittplans."/>
  </#if>
  <#list boards as b>
    <@say fulls(b.parts) + " zu einem Rohling von " + b.blank + " schneiden, an den Enden rechtwinklig: " + b.wider + " breiter als das fertige Brett, das nehmen die Längsschnitte, und nicht länger."/>
  </#list>
  <@say "Sägeblatt in einem Reststück probieren: Ist die Schnittfuge nicht die angegebene, ändern sich Fugen und Breite mit ihr."/>
</#macro>

<#function numbersOf cuts><#return (cuts?size == 1)?then("Schnitt ", "Schnitte ") + joined(cuts?map(c -> c.number?string))></#function>
<#function sizesOf cuts><#return joined(cuts?map(c -> c.size + " (" + c.number + ")"))></#function>

<#macro keeping>
  <@title plains(allKept) + " aus " + plains(allBoards) + " schneiden"/>
  <#if has("keep-saw")>
    <@say "Über die ganze Fläche jedes Rohlings ein großes Dreieck zeichnen und seine Stücke nummerieren, damit jedes seinen alten Platz wiederfindet."/>
    <#list boards as b>
      <@say "Rohling von " + fulls(b.parts) + " ganz durch längs auftrennen, wie die Zeichnung des Rohlings zeigt: Streifen von " + sizesOf(b.rips) + " werden abgetrennt, der Rest ist der letzte Streifen."/>
      <@say "Was " + lettersOf(b.keptMarks) + " enthält, in der Reihenfolge der Nummern ablängen, " + numbersOf(b.crosscuts) + ", gegen einen Anschlag: Stücke von " + sizesOf(b.crosscuts) + " werden abgetrennt."/>
      <#list b.openings as o>
        <@say fulls(o.kept) + pick(o.kept, " kommt mit ", " kommen mit ") + o.offTheTool + " von der Säge: beiseitelegen" + o.trims?then(", später einzupassen", "") + "."/>
      </#list>
    </#list>
    <@say "Alle gesägten Kanten lassen, wie sie sind: Was davon abgehobelt würde, fehlte in der Breite."/>
  <#elseif has("keep-router")>
    <#list boards as b>
      <@say "Eine Schablone machen, die den Fräser von " + b.bit + " um die Mitte seiner Bahn in " + fulls(b.parts) + " führt."/>
      <#list b.openings as o>
        <@say "Seine Bahn ist ringsum " + b.bit + " breit, innerhalb einer Öffnung von " + o.opening + "; " + fulls(o.kept) + pick(o.kept, " bleibt ", " bleiben ") + o.finished + "."/>
      </#list>
    </#list>
    <@say "Brett und inneres Stück auf einer ebenen Unterlage festmachen, sodass sich keines bewegt, wenn das letzte Holz durchtrennt wird."/>
    <@say "In Durchgängen von höchstens " + usual("1/8 in", "3 mm") + " fräsen, den letzten knapp durch bis in die Unterlage."/>
    <#list boards as b>
      <@say "Ecken der Öffnung in " + fulls(b.parts) + " mit dem Stechbeitel rechtwinklig ausarbeiten; oder rund lassen, mit " + b.radius + " wie der Fräser oder mehr, und die Ecken von " + lettersOf(b.keptMarks) + " passend runden."/>
    </#list>
  <#else>
    <@say "In ein Reststück ein Probequadrat schneiden und messen, was der Laser nimmt."/>
    <#list boards as b>
      <@say "Bahn in " + fulls(b.parts) + " für eine Schnittfuge von " + b.kerf + " einstellen: Sie ist die Fuge ringsum."/>
      <#list b.openings as o>
        <@say "Eine Öffnung von " + o.opening + " schneiden; " + fulls(o.kept) + pick(o.kept, " bleibt ", " bleiben ") + o.finished + "."/>
      </#list>
    </#list>
    <@say "Inneres Stück so festmachen, dass es nicht kippen kann, wenn es frei wird."/>
  </#if>
  <@say "Auf jedes Stück das Zeichen schreiben, und wo oben war."/>
</#macro>

<#macro rejoining>
  <@title plains(allBoards) + " wieder verleimen"/>
  <@say "Streifen und Stücke auf einem ebenen Bett von Zwingen auslegen, wie das Dreieck es zeigt; das Stück, das bleibt, kommt nicht dazu."/>
  <@say "Alles trocken zusammenlegen: Die äußeren Enden liegen bündig, und die Maserung läuft über jede Fuge weiter."/>
  <#list boards as b>
    <#list b.openings as o>
      <@say "Prüfen, dass die Öffnung in " + fulls(b.parts) + " " + o.length + " lang ist: so lang wie das Stück, das bleibt, mit einer Schnittfuge an jedem Ende."/>
    </#list>
  </#list>
  <@with "masking-tape"/>
  <@say "Ein Distanzstück so lang wie jede Öffnung schneiden und mit Klebeband umwickeln: In die Öffnung gelegt, hält es die Endstücke, wo sie hingehören."/>
  <@say "Leim auf die Längskanten streichen, die zusammenkommen, und keinen, wo die Öffnung sein wird."/>
  <@say "Quer über die Streifen spannen, Zwingen abwechselnd darunter und darüber, und mit einer Richtlatte prüfen, dass die Flächen eben liegen."/>
  <@panelClamps usual("12 in", "300 mm")/>
  <@say "Leim aus den Ecken der Öffnung wischen, solange er nass ist."/>
  <@say "Insgesamt " + cured + " ruhen lassen; inzwischen mit den nächsten Schritten weitermachen."/>
</#macro>

<#macro trimming>
  <@title plains(parts) + " einpassen"/>
  <#list boards as b>
    <#list b.openings as o>
      <#if o.trims>
        <@say "Von jeder Längskante von " + fulls(o.kept) + " " + o.gap + " abnehmen: von " + o.offTheTool + " auf " + o.finished + "."/>
      <#else>
        <@say "Längskanten von " + fulls(o.kept) + " nacharbeiten, bis " + pick(o.kept, "es sich frei in seiner Öffnung bewegt", "sie sich frei in ihren Öffnungen bewegen") + "."/>
      </#if>
    </#list>
  </#list>
  <@say "Enden in Ruhe lassen: Dort ist die Schnittfuge die Fuge."/>
  <@say "An das Brett halten, aus dem es kam, und prüfen, dass die Maserung durchläuft."/>
</#macro>

<#macro resizing>
  <@title plains(allBoards) + " putzen und auf Maß bringen"/>
  <@say "Leim von beiden Flächen und aus der Öffnung schaben."/>
  <@say "Fugen mit Handhobel oder Ziehklinge ebnen und nicht mehr als das wegnehmen."/>
  <#list boards as b>
    <@say fulls(b.parts) + " in der Breite messen: Die Streifen müssen zusammen " + b.width + " ergeben; ist es breiter, eine Längskante hobeln."/>
  </#list>
  <@say "Enden bündig schneiden, wenn ein Stück vorsteht."/>
</#macro>

<#-- Abstände, jeder einmal, mit den Kanten, von denen sie gemessen sind; einer von mehreren Kanten oder mehrere von einer stehen zusammen. -->
<#function fenced values>
  <#local distances = []>
  <#list values as v><#if !distances?seq_contains(v.value)><#local distances = distances + [v.value]></#if></#list>
  <#local groups = []>
  <#list distances as d>
    <#local sides = []>
    <#list values as v><#local side = sideOf(v.side, v.edge)><#if v.value == d && !sides?seq_contains(side)><#local sides = sides + [side]></#if></#list>
    <#local from = sides[0] + (sides?size == 1)?then("", ", dann ab " + sides[1..]?join(" und "))>
    <#if groups?size gt 0 && groups?last.from == from>
      <#local groups = groups[0..<groups?size - 1] + [{"from": from, "distances": groups?last.distances + [d]}]>
    <#else>
      <#local groups = groups + [{"from": from, "distances": [d]}]>
    </#if>
  </#list>
  <#local said = groups?map(g -> joined(g.distances) + " ab " + g.from)>
  <#return said?join("")?contains(", dann")?then(said?join("; "), joined(said))>
</#function>
<#function asDrawn fence><#return fence.asDrawn?then(", wie das Teil gezeichnet ist", "")></#function>
<#-- Wo auf diesen Linien die Löcher oder Langlöcher liegen, falls es welche gibt. -->
<#function alongLines fence>
  <#local lines = (fence.values?size == 1)?then("auf dieser Linie", "auf diesen Linien")>
  <#if fence.along?size gt 0><#return "; " + lines + " " + fenced(fence.along)></#if>
  <#return fence.alongDrawn?then("; wo " + lines + ", zeigt die Teilzeichnung", "")>
</#function>

<#-- Wo die Linien von Überblattungen geschnitten werden, damit sich dafür ein Anschlag setzen lässt. -->
<#macro stopsSet>
  <#list fences as fence>
    <@say "Bei " + fulls(fence.parts) + " den Anschlag so setzen, dass auf der Abfallseite der " + (fence.values?size == 1)?then("Linie", "Linien") + " geschnitten wird: " + fenced(fence.values) + asDrawn(fence) + "."/>
  </#list>
</#macro>
<#-- Auf welchen Linien die Mitten von Löchern oder Langlöchern liegen. -->
<#macro middles what>
  <#list fences as fence>
    <@say "Auf " + fulls(fence.parts) + " liegen die Mitten der " + what + " " + fenced(fence.values) + asDrawn(fence) + alongLines(fence) + "."/>
  </#list>
</#macro>

<#-- Die Schraube gleitet in ihrem Langloch, quer zur Faser dessen, was arbeitet. -->
<#function slotsRun><#return cut.slotsRun?has_content?then(": Jedes verläuft " + (words["clamp." + cut.slotsRun])!"", "")></#function>

<#-- Wo das Kugellager eines Fräsers in die Mündung einer Nut fallen würde. -->
<#macro slotsPlugged>
  <#if crossed.gaps?size gt 0>
    <@say "Wo eine Nut in eine solche Kante von " + fulls(crossed.gaps) + " mündet, zuerst ein Reststück flächenbündig in ihre Mündung schieben: Das Kugellager würde hineintauchen."/>
  </#if>
</#macro>
<#-- Eine profilierte Kante darf nicht in die Verbindung laufen, in der ihr Ende steht. -->
<#macro stoppedShort how>
  <#list crossed.stopsShort as s>
    <@say "Bei " + fulls(s.parts) + " " + s.depth + " vor einem Ende aufhören, das in einer Nut steht, und diese Ecke rechtwinklig lassen: " + how + " würde sie als Fuge in der Verbindung auffallen."/>
  </#list>
</#macro>

<#macro cutting>
  <#assign noun = cutName(cut.term, 2)>
  <#if has("cut-curve")>
    <@title (cut.term == "notch")?then((cut.count == 1)?then("Geschweifte Ausklinkung", "Geschweifte Ausklinkungen") + inParts() + " schneiden", cutName("outline", cut.count) + inParts() + " sägen")/>
    <@say "Schweifungen auf " + fulls(parts) + " nach den Teilzeichnungen aufreißen: Bögen nach ihrem Radius ziehen, eine dünne Leiste durch die bezifferten Punkte biegen und sie mit geraden Linien verbinden, wo die Kante gerade ist."/>
    <@bySheets "eine Kopie auf dünne Pappe kleben, ausschneiden und stattdessen daran entlang zeichnen."/>
    <#if parts?filter(p -> p.count gt 1)?size gt 0>
      <@say "Bei gleichen Teilen das erste genau nach der Linie machen und als Schablone für die anderen nehmen; ein linkes und ein rechtes liegen Fläche an Fläche."/>
    </#if>
    <@say "Knapp außerhalb der Linie sägen."/>
    <@say "Bis zur Linie nacharbeiten, von den hohen Stellen zu den tiefen, bis keine flache Stelle und keine Beule mehr zu fühlen ist."/>
  <#elseif has("cut-opening")>
    <#assign noun = cutName(cut.term, cut.count)>
    <@title noun + inParts() + " schneiden"/>
    <@say fulls(parts) + " nach den Teilzeichnungen anreißen, mit den Mittelpunkten der Rundungen."/>
    <@bySheets "eine Kopie aufkleben und stattdessen Mittelpunkte und Umriss durchstechen."/>
    <@say "Zuerst die Rundungen bohren, auf einem Unterlegbrett, mit " + (cut.holeBits?size == 0)?then("einem Bohrer, dessen Durchmesser das Doppelte ihres Radius ist", "dem Bohrer von " + joined(cut.holeBits)) + "."/>
    <@say "Den Abfall zwischen den Bohrungen knapp innerhalb der Linie aussägen und bis zur Linie nacharbeiten."/>
    <#if cut.forHand>
      <@say "Kanten brechen, wo eine Hand hineingreift."/>
    </#if>
  <#elseif has("cut-roundover")>
    <@title "Kanten" + onParts() + " abrunden"/>
    <@say "Abrundfräser mit Radius " + cut.size + " einsetzen und an einem Reststück probieren."/>
    <@slotsPlugged/>
    <#if verb == "trim" && cut.rounds?size == 2>
      <@say "Mit der Oberseite nach oben legen und zuerst die oberen Kanten nehmen; dann für die unteren auf eine Decke wenden, ein großes Stück zu zweit."/>
    <#elseif verb == "trim" && cut.rounds?size == 1>
      <@say (cut.rounds[0] == "top")?then("Mit der Oberseite nach oben legen, ein großes Stück zu zweit", "Auf eine Decke wenden, ein großes Stück zu zweit") + ": Gerundet werden die " + (cut.rounds[0] == "top")?then("oberen", "unteren") + " Kanten."/>
    </#if>
    <@say "Kanten von " + fulls(parts) + " abrunden, die in den Teilzeichnungen genannt sind" + cut.endGrain?then(": zuerst quer am Hirnholz, dann längs", "") + "."/>
    <@stoppedShort "Gerundet"/>
    <@say "Die Form in zwei oder drei Durchgängen nehmen, den letzten ganz fein."/>
  <#elseif has("cut-edge-notch")>
    <@title "Ausklinkungen entlang der Kanten" + onParts() + " schneiden"/>
    <@say "Ein Opferbrett an den Anschlag schrauben, damit das Werkzeug hineinlaufen darf, und auf eine Tiefe von " + cut.depth + " einstellen."/>
    <@say "Anschlag nach einem Reststück gleicher Dicke einstellen, bis die Ausklinkung " + cut.size + " breit ist; in mehreren Durchgängen, die Kante zuletzt."/>
    <@say "Die in der Teilzeichnung gezeigte Kante am Anschlag führen: " + letters() + "."/>
  <#elseif has("cut-notch") || has("cut-cutout") || has("cut-other")>
    <@title noun + inParts() + " schneiden"/>
    <@say fulls(parts) + " nach den Teilzeichnungen anreißen."/>
    <@say "Auf der Abfallseite der Linie sägen."/>
    <@say "Mit einem scharfen Stechbeitel bis zur Linie nacharbeiten."/>
  <#elseif has("cut-taper") || has("cut-short-taper")>
    <@title "Verjüngungen" + onParts() + " schneiden"/>
    <@say "Jede Verjüngung auf " + fulls(parts) + " nach den Teilzeichnungen anreißen: Anfangslinie ringsum, und was am Ende stehen bleibt."/>
    <@bySheets "eine Kopie auflegen, um die Linie vor dem Sägen zu prüfen."/>
    <#if has("cut-short-taper")>
      <@say "Teil in die Bankzange spannen und von Hand etwas außerhalb der Linie sägen, " + cut.size + " weg auf " + cut.depth + ": Ein so kurzes Teil ist in einer Vorrichtung an der Säge nicht sicher."/>
      <@say "Wo eine zweite Fläche verjüngt wird, ihre Linie neu ziehen, wo der erste Schnitt sie weggenommen hat."/>
    <#else>
      <@say "Keilschlitten so einstellen, dass die Linie vom Anfang zum Ende in der Bahn des Sägeblatts liegt: " + cut.size + " weg auf " + cut.depth + "."/>
      <@say "Etwas außerhalb der Linie sägen, das dünner werdende Ende zuletzt."/>
      <@say "Wo eine zweite Fläche verjüngt wird, das Reststück wieder unter das Teil legen, damit es flach liegt."/>
      <@say "Ohne Vorrichtung von Hand auf der Abfallseite sägen."/>
    </#if>
    <@say "Bis zu den Linien hobeln, vom Anfang der Verjüngung zum Ende hin, und an der Anfangslinie aufhören."/>
  <#elseif has("cut-bevel")>
    <@title "Enden" + ofParts() + " schräg schneiden"/>
    <@say "Sägeblatt um " + cut.angle + " aus dem Lot neigen und an einem Probeschnitt mit der Schmiege prüfen."/>
    <@say "Anschlagklotz so setzen, dass der Schnitt genau an der Ecke ausläuft und " + pick(parts, "das", "jedes") + " Teil, über alles gemessen, so lang bleibt, wie es ist: " + letters() + "."/>
    <@say "Vor jedem Schnitt in die Teilzeichnung sehen: Sie zeigt, wohin sich jedes Ende neigt."/>
  <#elseif has("cut-mitre")>
    <@title "Enden" + ofParts() + " mit dem Gehrungsanschlag schräg ablängen"/>
    <@say "Gehrungsanschlag um " + cut.angle + " aus dem rechten Winkel stellen und an einem Probeschnitt mit der Schmiege prüfen."/>
    <@say "Anschlagklotz so setzen, dass der Schnitt genau an der Ecke ausläuft und " + pick(parts, "das", "jedes") + " Teil, über alles gemessen, so lang bleibt, wie es ist: " + letters() + "."/>
    <@say "Vor jedem Schnitt in die Teilzeichnung sehen: Sie zeigt, wohin jedes Ende schräg läuft."/>
  <#elseif has("cut-chamfer")>
    <@title "Kanten" + onParts() + " fasen"/>
    <#if cut.edges?size gt 0>
      <@say "Auf " + fulls(parts) + " " + cut.size + " von der Kante auf beiden Flächen anzeichnen, die dort zusammenkommen: " + joined(cut.edges?map(e -> words["edge." + e[0]] + " mit " + words["edge." + e[1]])) + "."/>
    <#else>
      <@say "Wo die Teilzeichnungen von " + fulls(parts) + " eine Fase zeigen, " + cut.size + " von der Kante auf beiden Flächen anzeichnen, die dort zusammenkommen."/>
    </#if>
    <@slotsPlugged/>
    <@stoppedShort "Gefast"/>
    <@say "Kante unter 45° mit dem Fasefräser in der Oberfräse oder mit dem Hobel abnehmen" + cut.acrossGrain?then("; zuerst quer zur Faser, dann längs", "") + "."/>
  <#elseif has("cut-leaning")>
    <@title "Geneigte " + noun + inParts() + " schneiden"/>
    <@say "Beide Wände auf der Fläche von " + fulls(parts) + " nach den Teilzeichnungen anreißen und die Linien mit der Schmiege, um " + cut.angle + " aus dem rechten Winkel gestellt, an den Kanten hinunterführen: von der Fläche in die Tiefe neigen sich die Wände " + leanings[cut.leans] + "."/>
    <@say "Breite mit dem Teil probieren, das hineinkommt, in seiner Neigung gehalten: Die Nut ist auf der Fläche " + cut.leaningWidth + " breit, mehr, als das Teil dick ist."/>
    <@say "Einen im selben Winkel gehobelten Klotz an jeder Linie festspannen und daran " + cut.depth + " tief hinuntersägen."/>
    <@say "Abfall ausstemmen und den Grund mit dem Grundhobel ebnen, überall " + cut.depth + " tief."/>
    <@say "Teil probieren, das hineinkommt: Es soll sich von Hand ohne Spiel einschieben lassen."/>
  <#elseif has("cut-mortise")>
    <@title "Zapfenlöcher" + inParts() + " schneiden"/>
    <@say "Zapfenlöcher in " + fulls(parts) + " nach den Teilzeichnungen anreißen, " + pick(parts, "alle ", "gleiche Teile nebeneinander und ") + "von ein und demselben Ende aus."/>
    <@say "Werkzeug auf " + cut.size + " Breite" + (cut.depth == "")?then("", " und " + cut.depth + " Tiefe") + " einstellen."/>
    <@say "In einem Reststück ein Probeloch machen und aufheben: Die Zapfen werden danach angepasst."/>
    <#list fences as fence>
      <@say "Bei " + fulls(fence.parts) + " den Anschlag einstellen auf " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <#if cut.depth == "">
      <@say "Von beiden Flächen bis zur Mitte arbeiten, den Anschlag an derselben Seite, damit keine Fläche ausreißt."/>
    <#else>
      <@say "In mehreren Durchgängen bis zur Tiefe gehen und an den Linien aufhören."/>
    </#if>
    <@say "Späne ausräumen und die Enden mit dem Stechbeitel rechtwinklig ausarbeiten."/>
  <#elseif has("cut-haunch-socket")>
    <@title "Löcher für die Federansätze" + inParts() + " schneiden"/>
    <@say "Seitenlinien der Zapfenlöcher so weit verlängern, wie die Teilzeichnungen von " + fulls(parts) + " zeigen: Ein solches Loch ist so breit wie sein Zapfenloch und beginnt an dessen Ende."/>
    <@say "Wo es am Ende offen ist, innerhalb beider Linien hinuntersägen und das dazwischen ausstemmen; sonst wie das Zapfenloch stemmen oder mit gleich eingestelltem Anschlag fräsen."/>
    <@say "Den Grund überall " + cut.depth + " tief ebnen, damit der Federansatz ihn erreicht, wenn die Brüstung schließt."/>
  <#elseif has("cut-round-ended-mortise")>
    <@title "Zapfenlöcher für die losen Zapfen" + inParts() + " fräsen"/>
    <@say "Jedes Teil (" + letters() + ") neben das legen, mit dem es zusammenkommt, wie sie verbunden werden, und die Mitte jedes Zapfenlochs über beide anreißen."/>
    <@say "Tiefenanschlag der Oberfräse auf " + cut.depth + " stellen, mit einem Fräser von " + cut.size + ", und den losen Zapfen in einem Probeloch versuchen: Er soll sich von Hand ohne Spiel einschieben lassen."/>
    <@routerCarried/>
    <@insetTold "Parallelanschlag einstellen"/>
    <@say "Jedes Zapfenloch in Durchgängen fräsen, über alles " + cut.length + " lang, und seine Enden rund lassen."/>
    <@say "Auf die zwei Zapfenlöcher jeder Verbindung dieselbe Nummer schreiben."/>
  <#elseif has("cut-biscuit-slot")>
    <@title "Flachdübelschlitze" + inParts() + " fräsen"/>
    <@say "Jedes Teil (" + letters() + ") an seinen Platz halten, an das, mit dem es zusammenkommt, und die Mitte jedes Flachdübels über beide anreißen, wie die Teilzeichnungen sie angeben."/>
    <@say "Flachdübelfräse auf " + cut.forTitle + " einstellen, das sind " + cut.depth + " Tiefe."/>
    <@insetTold "Anschlag einstellen"/>
    <@say "Marke der Fräse auf jede Linie legen, Anschlag flach andrücken und bis zum Anschlag eintauchen: Die Teilzeichnungen zeigen, wie viele Schlitze jedes Teil hat."/>
  <#elseif has("cut-peg-slot")>
    <@title "Langlöcher für Holznägel" + inParts() + " schneiden"/>
    <@say "An beiden Enden jedes Langlochs in " + fulls(parts) + " ein Loch von " + cut.size + " bohren, wo die Teilzeichnungen es zeigen, mit einem Holzrest unter der Feder."/>
    <@middles "Langlöcher"/>
    <@say "Das dazwischen mit dem Stechbeitel ausräumen, in Faserrichtung des Holzes daneben, bis ein Holznagel von Ende zu Ende gleitet: über alles " + cut.length + "."/>
  <#elseif has("cut-screw-slot")>
    <@title "Langlöcher für Schrauben" + inParts() + " schneiden"/>
    <@say "An beiden Enden jedes Langlochs in " + fulls(parts) + " ein Loch von " + cut.size + " bohren, wo die Teilzeichnungen es zeigen, mit einem Holzrest darunter" + slotsRun() + "."/>
    <@middles "Langlöcher"/>
    <@say "Das dazwischen mit dem Stechbeitel oder einer kleinen Säge ausräumen, bis eine Schraube von Ende zu Ende gleitet: über alles " + cut.length + "."/>
  <#elseif has("cut-fastener-slot")>
    <@title "Schlitze für die Plattenhalter" + inParts() + " schneiden"/>
    <@say "Die Mitte jedes Schlitzes auf " + fulls(parts) + " nach den Teilzeichnungen anreißen."/>
    <#list fences as fence>
      <@say "Bei " + fulls(fence.parts) + " den Anschlag so einstellen, dass die Mitte des Schlitzes liegt: " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Jeden Schlitz " + cut.size + " breit, " + cut.depth + " tief und " + cut.length + " lang schneiden, mit Flachdübelfräse oder Oberfräse und Parallelanschlag an der Oberkante."/>
    <@say "Einen Plattenhalter probieren: Seine Zunge soll sich ohne Kraft einschieben lassen, von Ende zu Ende. Sein Fuß muss etwas unter der Oberkante enden, damit die Schraube die Platte herabzieht: Ist er anders hoch, nach ihm messen."/>
  <#elseif has("cut-tenon")>
    <@title "Zapfen" + onParts() + " schneiden"/>
    <@say "Zapfen auf " + fulls(parts) + " nach den Teilzeichnungen anreißen."/>
    <@say "Zuerst die Brüstungen schneiden, alle gegen einen Anschlag, " + cut.depth + " vom Ende."/>
    <@say "Wangen an einem Reststück gleicher Dicke sägen, bis sein Zapfen von Hand ohne Spiel in das Probeloch geht, etwa " + cut.size + " dick."/>
    <@say "Wangen aller Zapfen etwas dicker sägen, dann die Kanten."/>
    <#if has("cut-haunch")>
      <@say "An der Kante, an der die Zeichnung einen Federansatz zeigt, am Zapfen entlang nur bis zur Linie des Ansatzes sägen, dann quer darauf zu, damit der Ansatz stehen bleibt."/>
    </#if>
    <@say "Jeden Zapfen nach seinem eigenen Zapfenloch nachstechen und auf beide dieselbe Nummer schreiben."/>
    <#if has("cut-haunch")>
      <@say "Von einem Federansatz, der seine Brüstung nicht schließen lässt, am Ende einen Span abnehmen."/>
    </#if>
    <@say "Ende jedes Zapfens leicht fasen, damit er gut hineinfindet."/>
  <#elseif has("cut-spline-slot")>
    <@title "Federschlitze" + inParts() + " schneiden"/>
    <@say "Werkzeug auf " + cut.size + " Breite und " + cut.depth + " Tiefe einstellen und die Feder in einem Probeschlitz versuchen: Sie soll sich von Hand ohne Spiel einschieben lassen."/>
    <@say "Ein dünneres Blatt schneidet den Schlitz in Durchgängen nebeneinander: denselben Durchgang in allen Teilen machen, bevor der Anschlag versetzt wird."/>
    <#if cut.inFrame>
      <@say fulls(parts) + " in einer Vorrichtung unter 45° halten, die Gehrung flach auf dem Tisch, bei jedem Schnitt die Sichtfläche am Anschlag: Dann werden die Flächen bündig, auch wenn der Schlitz ein Haar neben der Mitte liegt."/>
      <#if cut.notched>
        <@say "Wo diese Fläche ausgeklinkt ist, liegt sie nur mit ihrer vollen Dicke am Anschlag: dort andrücken und die Ausklinkung mit einem Reststück füllen, so dick, wie sie tief ist, damit das Teil nicht wackelt."/>
      </#if>
      <#list fences as fence>
        <@say "Bei " + fulls(fence.parts) + " liegt die nähere Seite des Schlitzes " + fenced(fence.values)?replace("Kante", "Fläche") + asDrawn(fence) + "."/>
      </#list>
      <@say "Jeden Schlitz über die Länge der Gehrung schneiden, wie die Teilzeichnungen zeigen."/>
    <#else>
      <@say "Sägeblatt auf 45° neigen und " + fulls(parts) + " mit der Außenfläche nach oben legen, die lange Spitze der Gehrung an einem Anschlagklotz; den Anschlag so einstellen, dass die nähere Wand des Schlitzes, auf der Gehrung gemessen, so weit von der Innenkante liegt, wie bei diesem Schritt angegeben."/>
      <@say "Jeden Schlitz mit derselben Kante der Teile voran schneiden und darauf achten, dass kein Schnitt der Außenfläche nahe kommt."/>
    </#if>
  <#elseif has("cut-tails")>
    <@title "Schwalben von " + cut.depth + onParts() + " schneiden"/>
    <@say "Streichmaß auf die Grundlinie stellen, " + cut.depth + " vom Ende, und mit der Dicke der Bretter vergleichen, die die Schwalben aufnehmen" + (cut.tailLap)?then(": Was es übrig lässt, ist die Überdeckung", ": Es darf nicht weniger sein") + "."/>
    <@say "Grundlinie auf beiden Flächen und beiden Kanten von " + fulls(parts) + " leicht anreißen."/>
    <@say "Schwalben auf der Außenfläche nach den Teilzeichnungen einteilen, auf jedem Brett von derselben Kante aus, rechtwinklig über das Hirnholz und mit der Schmiege 1:" + cut.slope + " auf der Fläche hinunter; den Abfall ankreuzen."/>
    <@say "Beide Flanken jeder Schwalbe bis zur Grundlinie sägen, auf der Abfallseite der Linie und rechtwinklig zur Fläche. Gleiche Bretter lassen sich zusammenspannen und wie eines sägen."/>
    <@say "Den Abfall an beiden Kanten absägen, zwischen den Schwalben das meiste mit der Laubsäge aussägen und von beiden Flächen bis zur Grundlinie stemmen."/>
    <@say "Auf beide Bretter jeder Ecke dieselbe Nummer schreiben: Die Zinken werden nach ihren eigenen Schwalben angerissen."/>
  <#elseif has("cut-pins") || has("cut-half-blind-pins")>
    <@title "Zinken" + onParts() + " schneiden"/>
    <@say "Grundlinie auf " + fulls(parts) + " anreißen, " + cut.depth + " vom Ende, " + has("cut-pins")?then("auf beiden Flächen.", "auf der Innenfläche.")/>
    <#if has("cut-half-blind-pins")>
      <@say "Auf dem Hirnholz eine Linie anreißen, " + cut.tailLength + " von der Innenfläche: Dort enden die Lücken."/>
    </#if>
    <@say "Jedes Brett aufrecht in die Bankzange spannen, Innenfläche zum Körper, die eigenen Schwalben mit ihrer Grundlinie an der Innenfläche" + has("cut-half-blind-pins")?then(" und ihren Enden an der angerissenen Linie", "") + " über das Ende legen, Kanten wie in der Teilzeichnung, und mit dem Messer umfahren."/>
    <@say "Linien rechtwinklig auf der Innenfläche bis zur Grundlinie hinunterführen und ankreuzen, was wegfällt: die Plätze der Schwalben."/>
    <#if has("cut-half-blind-pins")>
      <@say "Auf der Abfallseite der Linien schräg vom Ende zur Grundlinie auf der Innenfläche sägen, nicht weiter als beide angerissenen Linien."/>
      <@say "Lücken mit einem auf " + cut.tailLength + " eingestellten Nutfräser ausräumen oder Schicht um Schicht ausstemmen und ihre Ecken mit dem Stechbeitel nachstechen."/>
    <#else>
      <@say "Auf der Abfallseite sägen, damit die Linien stehen bleiben, rechtwinklig bis zur Grundlinie."/>
      <@say "Das meiste mit der Laubsäge aussägen und von beiden Flächen bis zur Grundlinie stemmen."/>
    </#if>
    <@say "Jede Ecke von Hand ansetzen und sehen, wo sie klemmt; dort nachstechen. Vor dem Leimen nicht mehr als einmal ganz zusammentreiben."/>
  <#elseif has("cut-half-lap") || has("cut-cross-lap")>
    <@title noun + inParts() + " schneiden"/>
    <@say noun + " auf " + fulls(parts) + " nach den Teilzeichnungen anreißen" + pick(parts, "", ", gleiche Teile nebeneinander und von ein und demselben Ende aus") + "; den Abfall ankreuzen."/>
    <#if cut.onEdge>
      <@say "Tiefe auf " + cut.depth + " stellen und an zwei Reststücken so breit wie die Teile probieren: ausgeklinkt und hochkant zusammengesteckt, müssen ihre Kanten bündig liegen."/>
      <@stopsSet/>
      <@say "Jedes Teil hochkant an den Gehrungsanschlag stellen. Ist das Werkzeug so breit wie der Schlitz, den Anschlag so stellen, dass es zwischen beiden Linien liegt, und jeden Schlitz in einem Zug schneiden; mit einem schmaleren zuerst an beiden Linien schneiden, dann ausräumen, was dazwischen ist."/>
    <#else>
      <@say "Tiefe auf " + cut.depth + " stellen und an zwei Reststücken in der Dicke der Teile probieren: übereinandergelegt, müssen ihre Flächen bündig liegen."/>
      <@stopsSet/>
      <@say "Zuerst jede Brüstung schneiden, das Teil am Gehrungsanschlag und an einem Klotz, dann den Abfall Durchgang für Durchgang abnehmen."/>
    </#if>
    <@say "Jedes Paar von Hand zusammenstecken: eine Wand oder einen Grund, der zu hoch ist, nachstechen und auf beide dieselbe Nummer schreiben."/>
  <#elseif has("cut-open-mortise")>
    <@title "Schlitze" + inParts() + " schneiden"/>
    <@say "Schlitze auf den Enden und beiden Kanten von " + fulls(parts) + " nach den Teilzeichnungen anreißen, mit einmal eingestelltem Streichmaß; den Abfall ankreuzen."/>
    <#list fences as fence>
      <@say "Bei " + fulls(fence.parts) + " beide Linien von ein und derselben Seite anreißen: " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Zuerst beide Wände an einem Reststück gleicher Dicke sägen: Der Schlitz ist " + cut.size + " breit und " + cut.depth + " tief."/>
    <@say "Wände in allen Teilen auf der Abfallseite sägen, jedes Mal mit derselben Fläche an der Vorrichtung."/>
    <@say "Den Abfall am Grund mit der Laubsäge herausnehmen und bis zur Linie stemmen, von beiden Kanten zur Mitte."/>
  <#elseif has("cut-bridle-cheek")>
    <@title "Zapfenwangen" + onParts() + " schneiden"/>
    <@say "Wangen auf beiden Flächen von " + fulls(parts) + " nach den Teilzeichnungen anreißen, die Brüstungslinien mit dem Winkel ringsum gezogen."/>
    <@say "Tiefe auf " + cut.depth + " stellen und beide Flächen eines Reststücks gleicher Dicke schneiden: Was bleibt, soll von Hand ohne Spiel in den Schlitz gehen."/>
    <@stopsSet/>
    <@say "Zuerst jede Brüstung gegen einen Anschlag schneiden, dann den Abfall Durchgang für Durchgang abnehmen, ebenso auf der anderen Fläche."/>
    <@say "Jeden nach seinem eigenen Schlitz nachstechen und auf beide dieselbe Nummer schreiben."/>
  <#elseif has("cut-box-joint")>
    <@title "Fingerzinken" + onParts() + " schneiden"/>
    <@say "Werkzeug auf " + cut.size + " Breite und " + cut.depth + " Höhe einstellen. Ein Brett an den Gehrungsanschlag schrauben, einen Schlitz hindurchschneiden und darin eine Leiste so breit wie der Schlitz befestigen, einen Finger, " + cut.size + ", vom Werkzeug entfernt."/>
    <@say "Eine Probeecke aus zwei Reststücken gleicher Dicke schneiden: Klemmt sie, die Leiste um die Hälfte des Überschusses auf das Werkzeug zu versetzen; ist sie lose, von ihm weg."/>
    <@say "Zuerst die Bretter mit einem Finger an der Kante schneiden: diese Kante an die Leiste, dann jeden neuen Schlitz der Reihe nach auf die Leiste."/>
    <@say "Für die Bretter, die mit einem Schlitz beginnen, ein fertiges Brett mit seinem ersten Schlitz als Distanz auf die Leiste setzen und den ersten Schnitt daran machen; weiter wie zuvor."/>
    <@say "Von der Kante zählen, die die Teilzeichnungen von " + fulls(parts) + " zeigen, bei jedem Brett von derselben, und die Innenflächen anzeichnen."/>
  <#elseif has("cut-lid-tongue")>
    <@title "Kanten" + ofParts() + " dünner schneiden"/>
    <@scrapFence "Schnitt"/>
    <@say "Anschlag so setzen, dass das Werkzeug " + cut.depth + " von der Kante reicht, und die Kante eines Reststücks gleicher Dicke auf den in der Teilzeichnung gezeigten Flächen auf " + cut.size + " bringen."/>
    <@say "In einer Deckelnut probieren: Es soll mit etwas Spiel gleiten, die Brüstung frei von der Seite."/>
    <#list crossed.thinned as t>
      <@say fulls([t.part]) + " in derselben Einstellung dünner schneiden, an " + joined(t.edges?map(e -> sideOf("edge", e))) + ", nur von " + joined(t.faces?map(f -> sideOf("face", f))) + ", zuerst quer zur Faser, dann längs."/>
    </#list>
  <#elseif has("cut-lid-groove")>
    <@title "Deckelnuten" + inParts() + " schneiden"/>
    <@say "Werkzeug auf " + cut.size + " Breite und " + cut.depth + " Tiefe einstellen: Das ist mehr als die Kante des Deckels, damit er gleitet."/>
    <#if cut.lidEdge != "">
      <@say "Ein Reststück auf " + cut.lidEdge + " hobeln, in einem anderen eine Probenut schneiden und das Reststück darin laufen lassen: Es soll mit etwas Spiel gleiten und nicht klappern. Aufheben: Die Kanten des Deckels werden auf dieselbe Dicke gebracht."/>
    <#else>
      <@say "In einem Reststück eine Probenut schneiden und die Kante des Deckels darin laufen lassen: Sie soll mit etwas Spiel gleiten und nicht klappern."/>
    </#if>
    <#list fences as fence>
      <@say "Bei " + fulls(fence.parts) + " den Anschlag einstellen auf " + fenced(fence.values) + "."/>
    </#list>
    <@runStopped/>
  <#elseif has("cut-stopped-dado")>
    <@title noun + inParts() + " fräsen"/>
    <@say "Oberfräse auf " + cut.depth + " Tiefe einstellen. Ein Fräser, der schmaler als " + cut.size + " ist, schneidet diese Breite in zwei Durchgängen, mit versetzter Führung."/>
    <@say "In einem Reststück gleicher Dicke eine Probenut schneiden und das Teil probieren, das hineinkommt: Es soll sich von Hand ohne Spiel einschieben lassen."/>
    <#list fences as fence>
      <@say "Auf " + fulls(fence.parts) + " die nähere Seite jeder Quernut anreißen: " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
    <@say "Die Linie anreißen, wo nach der Teilzeichnung jede Quernut endet, eine gerade Führung quer über das Teil spannen, und einen Klotz an die Führung, sodass der Fräser an dieser Linie endet."/>
    <@say "Von der offenen Kante bis zum Klotz fräsen, in zwei oder drei Durchgängen bis zur Tiefe."/>
    <@say "Jedes Ende mit dem Stechbeitel rechtwinklig ausarbeiten; oder rund lassen und die ausgeklinkte Ecke des Teils, das hineinkommt, nacharbeiten, bis sie passt."/>
  <#elseif has("cut-tongue") || has("cut-large-tongue")>
    <@title "Federn" + onParts() + " schneiden"/>
    <#if has("cut-large-tongue")>
    <@say "Eine Richtlatte quer über " + fulls(parts) + " spannen, sodass der Fräser " + cut.depth + " vom Ende reicht: Eine Fläche dieser Größe wird über keine Maschine geführt. Tiefe an einem Reststück gleicher Dicke einstellen, bis eine Feder von etwa " + cut.size + " Dicke von Hand ohne Spiel in die Nut geht."/>
    <@say "Vom Ende bis zur Richtlatte fräsen, in Durchgängen von höchstens " + usual("1/8 in", "3 mm") + "; die Fläche zu zweit wenden, die Richtlatte an dieselbe, um beide Kanten herumgewinkelte Linie setzen und die andere Seite fräsen."/>
    <@say "Brüstungen mit dem Simshobel nacharbeiten, bis sie in einer Linie liegen."/>
    <#else>
    <@scrapFence "Schnitt"/>
    <@say "Anschlag so setzen, dass das Werkzeug " + cut.depth + " vom Ende reicht, und an einem Reststück gleicher Dicke eine Probefeder von etwa " + cut.size + " Dicke schneiden."/>
    <@say "In der Nut probieren: Sie soll sich von Hand ohne Spiel einschieben lassen."/>
    <@say "Federn an " + fulls(parts) + " schneiden, mit dem Gehrungsanschlag durchgeschoben, auf beiden Flächen mit dem Ende an diesem Brett, damit die Brüstungen in einer Linie liegen."/>
    </#if>
  <#else>
    <@title noun + inParts() + " schneiden"/>
    <#assign guided = ["dado", "rabbet"]?seq_contains(cut.term)>
    <#assign sawn = guided?then(ways.fence + ways.sled, parts)>
    <#if sawn?size == 0>
      <@say "Oberfräse auf " + cut.depth + " Tiefe einstellen. Ein Fräser, der schmaler als " + cut.size + " ist, schneidet diese Breite in zwei Durchgängen, mit versetzter Führung" + (cut.takes == "sheet")?then(": nach einem Reststück der Platte richten, die hineinkommt", "") + "."/>
    <#elseif cut.takes == "sheet">
      <@say "Werkzeug nach einem Reststück der Platte einstellen, die hineinkommt, etwa " + cut.size + " breit" + ((cut.depth == "")?then("", " und " + cut.depth + " tief")) + "."/>
    <#else>
      <@say "Werkzeug auf " + cut.size + " Breite" + ((cut.depth == "")?then("", cut.inPasses?then(" einstellen; der letzte Durchgang geht " + cut.depth + " tief", " und " + cut.depth + " Tiefe einstellen"))) + (cut.depth == "")?then(" einstellen", "") + "."/>
    </#if>
    <#if cut.inPasses>
      <@say "In mehreren Durchgängen schneiden, die Probe auch: " + usual("3/8 in", "10 mm") + " tief beginnen, alle Teile durchführen und das Werkzeug für jeden weiteren Durchgang höchstens um ebenso viel höher stellen, denn der Schnitt ist tief für seine Breite."/>
    </#if>
    <@say "In einem Reststück gleicher Dicke zur Probe schneiden" + cut.inPasses?then(", bis zur ersten Tiefe", "") + "."/>
    <#if cut.term == "rabbet">
      <@say "Teil probieren, das hineinkommt: Seine Fläche soll mit dem Ende bündig liegen."/>
    <#elseif cut.takes == "item">
      <@say "Beschlag probieren, der hineinkommt: Er soll sich ohne Kraft einschieben lassen. Sein Fuß muss etwas unter der Oberkante enden, damit die Schraube die Platte herabzieht: Ist er anders hoch, nach ihm messen."/>
    <#elseif cut.takes == "sheet">
      <@say "Ein Reststück der Platte darin probieren: Es soll sich von Hand ohne Spiel einschieben lassen."/>
    <#elseif cut.takesTongue>
      <@say "Ein Reststück auf " + cut.size + " hobeln und dort probieren: Es soll sich von Hand ohne Spiel einschieben lassen. Aufheben: Die Federn werden auf dieselbe Dicke geschnitten."/>
    <#else>
      <@say "Teil probieren, das hineinkommt: Es soll sich von Hand ohne Spiel einschieben lassen."/>
    </#if>
    <#if guided && cut.term == "rabbet">
      <@rabbeting/>
    <#elseif guided>
      <@dadoing/>
    <#else>
      <@fencing/>
      <#if cut.narrow?size gt 0>
        <@say "Die Nut läuft in einer schmalen Kante, " + joined(cut.narrow?map(n -> n.edges?map(e -> words["edge." + e])?join(" und ") + n.asDrawn?then(", wie gezeichnet,", "") + " an " + fulls(n.parts))) + ": das Teil auf diese Kante stellen, seine Fläche an einem hohen Anschlag."/>
      </#if>
      <@runStopped/>
    </#if>
  </#if>
  <@easing/>
</#macro>

<#-- Nothing is measured from the end of a tongue that has lost a shaving. -->
<#macro easing>
  <#if easedLater?size gt 0>
    <@say "Die Enden der Federn an " + fulls(easedLater) + " noch lassen, wie sie sind: Was folgt, wird von ihnen aus gemessen; danach verlieren sie einen Span."/>
  </#if>
  <#if eased?size gt 0>
    <#local waited = !has("cut-tongue") && !has("cut-large-tongue")>
    <#if waited><@with "shoulder-plane"/></#if>
    <@say waited?then("Erst jetzt, da von dort aus nichts mehr gemessen wird, vom", "Vom") + " Ende jeder Feder" + (waited || easedLater?size gt 0)?then(" an " + fulls(eased), "") + " einen Span abhobeln, damit die Brüstungen schließen, bevor sie den Grund der Nut erreicht."/>
  </#if>
</#macro>

<#-- An einer Kante oder einem Ende kann ein Werkzeug breiter sein als das, was es wegnimmt. -->
<#macro scrapFence what>
  <@say "Ein Opferbrett an den Anschlag schrauben: Ein Werkzeug, das breiter als der " + what + " ist, läuft mit dem Rest seiner Breite hinein."/>
</#macro>

<#-- Eine Oberfräse kippt auf dem, was schmaler als ihre halbe Grundplatte ist. -->
<#macro routerCarried>
  <#if rests.onEnd?size + rests.onNarrow?size gt 0><@with "router-blocks"/></#if>
  <#if rests.onEnd?size gt 0>
    <@say fulls(rests.onEnd) + pick(rests.onEnd, "", " nacheinander") + " aufrecht zwischen zwei gerade Klötze spannen, die mit dem Ende bündig liegen und die Oberfräse tragen: Das Ende allein ist für ihre Grundplatte zu klein."/>
  </#if>
  <#if rests.onNarrow?size gt 0>
    <@say "Auf einer so schmalen Fläche wie der von " + fulls(rests.onNarrow) + " kippt die Grundplatte der Oberfräse: neben die bearbeitete Fläche einen geraden Klotz bündig spannen."/>
  </#if>
</#macro>

<#assign leanings = {"in": "zur Mitte des Teils hin", "out": "von der Mitte des Teils weg", "drawn": "so, wie es die Teilzeichnung zeigt"}>
<#macro fencing>
  <#list fences as fence>
    <@say "Bei " + fulls(fence.parts) + " den Anschlag einstellen auf " + fenced(fence.values) + asDrawn(fence) + "."/>
  </#list>
</#macro>

<#-- Ein Ende, das für die Länge des Teils kurz ist, darf nicht am Anschlag laufen. -->
<#macro rabbeting>
  <#if ways.fence?size + ways.sled?size gt 0>
    <@scrapFence "Falz"/>
  </#if>
  <#if ways.fence?size gt 0>
    <@say "Die in der Teilzeichnung gezeigte Kante von " + fulls(ways.fence) + " an diesem Brett führen."/>
  </#if>
  <#if ways.sled?size gt 0>
    <@say fulls(ways.sled) + " mit dem Gehrungsanschlag oder auf einem Ablängschlitten durchschieben, das in der Teilzeichnung gezeigte Ende an diesem Brett: Es wird nichts abgeschnitten, was dort klemmen könnte."/>
  </#if>
  <#if ways.router?size gt 0>
    <@say fulls(ways.router) + pick(ways.router, " ist", " sind je") + " zu groß, um mit dem Ende über die Säge zu gehen: eine Richtlatte quer darüberspannen, von der Brüstungslinie so weit entfernt, wie der Rand des Fräsers vom Rand der Grundplatte ist, ein Reststück bündig an der Kante, an der der Fräser austritt, und den Falz in zwei oder drei Durchgängen fräsen, von links nach rechts, mit der Richtlatte von einem selbst aus hinter der Oberfräse."/>
  </#if>
</#macro>

<#macro dadoing>
  <#if ways.router?size == 0>
    <@fencing/>
  <#else>
    <#list fences as fence>
      <@say "Auf " + fulls(fence.parts) + " die nähere Seite jeder Quernut anreißen: " + fenced(fence.values) + asDrawn(fence) + "."/>
    </#list>
  </#if>
  <#if ways.fence?size gt 0>
    <@say "Die genannte Kante am Anschlag führen."/>
  </#if>
  <#if ways.sled?size gt 0>
    <@say fulls(ways.sled) + " mit dem Gehrungsanschlag oder auf einem Ablängschlitten durchschieben, das genannte Ende am Anschlag: Eine Quernut schneidet nichts ab, was dort klemmen könnte."/>
  </#if>
  <#if ways.router?size gt 0>
    <@say fulls(ways.router) + pick(ways.router, " ist", " sind je") + " zu groß, um mit dem Ende über die Säge zu gehen: eine Richtlatte quer darüberspannen, von der Linie so weit entfernt, wie der Rand des Fräsers vom Rand der Grundplatte ist, ein Reststück bündig an der Kante, an der der Fräser austritt, und in zwei oder drei Durchgängen fräsen."/>
  </#if>
</#macro>

<#-- Ob kein Teil des Schrittes ohne eine von ihnen angerissen wird. -->
<#function allBySheets>
  <#return templatesTold && marks?filter(m -> !sheets?map(s -> s.mark)?seq_contains(m.mark))?size == 0>
</#function>

<#-- Die Schablonen in wahrer Größe, die das Aufreißen ersparen. -->
<#macro bySheets what>
  <#if sheets?size gt 0 && templatesTold>
    <#local told = sheets?map(s -> s.mark + (s.names?size == 1)?then("", " (" + number(s.names?size) + " Stück, überschrieben mit " + joined(s.names) + ")"))>
    <@say "Unter den Schablonen in wahrer Größe am Ende " + (sheets?size == 1 && sheets[0].names?size == 1)?then("gibt es eine ", "gibt es welche ") + "für " + joined(told) + ": " + what/>
  </#if>
</#macro>

<#-- Eine Nut, die im Teil endet, läuft von Anschlag zu Anschlag. -->
<#function sidesOfFences>
  <#local sides = fences?map(f -> f.values?map(v -> v.side)?join(" "))?join(" ")>
  <#local named = ["edge", "end", "face"]?filter(side -> sides?contains(side))?map(side -> {"edge": "die genannte Kante", "end": "das genannte Ende", "face": "die genannte Fläche"}[side])>
  <#return named?join(" oder ", "die genannte Kante")>
</#function>
<#macro runStopped>
  <#local edge = sidesOfFences()>
  <#if cut.stops>
    <@say "Wo die Teilzeichnung zeigt, dass sie im Teil endet, für dieses Ende einen Klotz an den Anschlag spannen."/>
    <@say edge + " am Anschlag führen, von Klotz zu Klotz, und diese Enden mit dem Stechbeitel rechtwinklig ausarbeiten."/>
  <#else>
    <@say edge + " am Anschlag führen."/>
  </#if>
</#macro>

<#-- Teile, die nicht bündig sind, haben jedes seinen Abstand: Die Flächen dürfen nicht ausgerichtet werden. -->
<#macro insetTold how>
  <#list insets as i>
    <#if i.side == "end">
      <@say "Auf " + fulls(i.parts) + " eine Linie quer anreißen, " + i.distance + " ab " + sideOf("end", i.face) + ", und so einstellen, dass die Mitte darauf liegt."/>
      <#continue>
    </#if>
    <@say how + ": bei " + fulls(i.parts) + " " + i.distance + " ab " + sideOf(i.side, i.face) + " bis zur Mitte."/>
  </#list>
  <#if insets?filter(i -> i.side != "end")?size == 0>
  <#elseif insets?filter(i -> i.flush)?size == insets?size>
    <@say "An beiden Teilen einer Verbindung auf dieser Seite bleiben, damit sie dort bündig werden."/>
  <#else>
    <@say "Für das andere Teil " + (insetOthers?size gt 0)?then("einer Verbindung, das bei " + fulls(insetOthers) + " in einem anderen Schritt an der Reihe ist,", "der Verbindung") + " neu einstellen: Die zwei sind " + (insets?filter(i -> i.flush)?size gt 0)?then("nicht alle", "nicht") + " bündig, jedes hat seinen eigenen Abstand."/>
  </#if>
</#macro>

<#assign pocketWays = {"up": " mit dem Flächenzeichen oben", "down": " mit dem Flächenzeichen unten"}>
<#function pocketWay p><#return (p.way == "either")?then(" mit der Fläche oben, die " + ((facesWay[p.face])!"") + " weisen wird", (pocketWays[p.way])!"")></#function>
<#macro drilling>
  <#if has("drill-pocket-hole")>
    <@title "Taschenlöcher" + inParts() + " bohren"/>
    <@say "Lehre und Stellring auf eine Dicke von " + cut.size + " einstellen."/>
    <@say "In ein Reststück zur Probe bohren und eine Schraube eindrehen, um zu sehen, wie weit ihre Spitze herauskommt."/>
    <@say "Jedes Teil so festspannen, dass die Fläche oben liegt, in der die Löcher beginnen, und bohren, wo die Teilzeichnungen es zeigen: " + pockets?map(p -> lettersOf(p.parts) + pocketWay(p))?join("; ") + "."/>
    <@say "Späne aus jedem Loch räumen."/>
  <#elseif cut.term == "mount pilot">
    <#assign fitting = pluralOf(cut.forKind)>
    <@title "Für " + fitting + inParts() + " vorbohren"/>
    <@say "Jedes Teil auf die Werkbank legen und anzeichnen, wo " + fitting + " sitzen werden, nach dem beiliegenden Blatt: " + letters() + "."/>
    <#list slideLines as line>
      <@say slideOwner(line) + "auf " + lookingFaces(line) + " eine Linie ziehen, " + slideHeight(line) + ", für die " + (cut.forKind == "under-slide")?then("Unterkante", "Mitte") + " der Schiene."/>
    </#list>
    <#if cut.forKind == "slide">
      <#list slideEnds as e>
        <@say "Ihr vorderes Ende liegt " + slideEnd(e) + "."/>
      </#list>
    </#if>
    <@say "Beschlag dort anhalten und die Löcher vorstechen, durch die er angeschraubt wird."/>
    <@say "Jetzt bohren: Ist das Möbel zusammengebaut, hat keine Bohrmaschine mehr davor Platz. Die Schrauben kommen später hinein, mit einem kurzen Schraubendreher."/>
  <#else>
    <#assign cup = cut.forKind == "concealed-hinge">
    <#assign named = {"peg hole": "Löcher für Holznägel", "fastener recess": "Aussparungen für Plattenhalter", "counterbore": "Stufenbohrungen"}>
    <#assign holes = named[cut.term]!(cup?then("Topflöcher", (cut.forKind == "")?then("Löcher", "Löcher für " + pluralOf(cut.forKind))))>
    <#assign bit = cup?then("Forstnerbohrer", "Holzspiralbohrer")>
    <@title (cut.forOne && cut.count == 1 && cut.forKind == "knob")?then("Loch für den Knopf", holes) + inParts() + " bohren"/>
    <#if cut.depth == "">
      <@say bit + " " + cut.size + " einsetzen."/>
      <@say "Ein Unterlegbrett hinter das Teil spannen, damit die Rückseite nicht ausreißt."/>
    <#else>
      <@say bit + " " + cut.size + " einsetzen, Tiefenanschlag auf " + cut.depth + "."/>
    </#if>
    <#if cup>
      <@say "Tiefe an einem Reststück in der Dicke der Tür probieren: Der Topf muss bündig liegen, und die Spitze des Bohrers darf nicht durchkommen."/>
      <#list fences as fence>
        <@say "Bei " + fulls(fence.parts) + " den Anschlag der Ständerbohrmaschine so einstellen, dass die Mitten der Töpfe liegen: " + fenced(fence.values) + asDrawn(fence) + alongLines(fence) + "."/>
      </#list>
      <@say "Diese Kante am Anschlag halten, damit jeder Topf denselben Abstand von ihr hat."/>
    </#if>
    <#if has("drill-dowel-hole")>
      <@say "Teile, die zusammenkommen, nebeneinanderlegen, wie sie verbunden werden, und die Linie jedes Lochs über beide anreißen."/>
      <@insetTold "Lehre einstellen"/>
      <@say "Lehre nacheinander auf jede Linie ausrichten, auf " + letters() + "."/>
      <@say "Bis zum Anschlag bohren und Späne aus jedem Loch räumen: Was darin bleibt, lässt die Verbindung nicht schließen."/>
      <@say "Einen Dübel von Hand probieren: Er soll mit leichten Schlägen hinein- und wieder herausgehen."/>
    <#else>
    <#if total(parts) gt 1 && !allBySheets()>
      <@say "Löcher auf jedem Teil von ein und demselben Ende aus anreißen."/>
    </#if>
    <@bySheets "eine Kopie nach Ende und Kante, die darauf gezeichnet sind, auf das Teil kleben und die Löcher durchstechen."/>
    <#if !cup>
      <@middles holes/>
    </#if>
    <#if crossed.bored?size gt 0>
      <@say "Die Löcher kreuzen eine Nut: zuerst ein Reststück, das sie füllt, in die Nut von " + fulls(crossed.bored) + " schieben, sonst reißt ihre nähere Wand innen aus."/>
    </#if>
    <@say fulls(parts) + " bohren, wie die Teilzeichnungen zeigen."/>
    <#if cut.forKind == "knob" && crossed.slides>
      <@with "countersink"/>
      <@say "Loch auch von der anderen Fläche senken, jetzt, solange das Holz roh ist: Der Kopf der Schraube für den Knopf muss darunter liegen."/>
    </#if>
    <#if crossed.sunk?size gt 0>
      <@with "countersink"/>
      <@say "Löcher auf " + cut.sunk + " Durchmesser senken, bis ein Schraubenkopf bündig liegt: an " + joined(crossed.sunk?map(s -> sideOf("face", s.face) + " von " + fulls(s.parts))) + "."/>
    </#if>
    </#if>
    <#if cut.forKind == "shelf-pin" && total(parts) gt 1>
      <@say "Teile, die sich gegenüberstehen, nebeneinanderlegen und prüfen, dass die Reihen übereinstimmen."/>
    </#if>
  </#if>
  <@easing/>
</#macro>

<#macro sanding>
  <@title onlyPanels?then(plains(parts), "Innenflächen") + " schleifen"/>
  <#assign grit = (finish.sandTo gt 0)?then(", bis Körnung " + finish.sandTo, "")>
  <#if oneFace?size gt 0>
    <@say "Jede Fläche, die nach innen zeigen wird, an " + lettersOf(oneFace) + " in Faserrichtung schleifen" + grit + "."/>
  </#if>
  <#if bothFaces?size gt 0>
    <@say "Beide Flächen von " + lettersOf(bothFaces?map(b -> b + {"counted": oneFace?filter(o -> o.mark == b.mark)?size gt 0})) + (oneFace?filter(o -> bothFaces?filter(b -> b.mark == o.mark)?size gt 0)?size gt 0)?then((total(bothFaces) == 1)?then(" (dem übrigen)", " (den übrigen)"), "") + " in Faserrichtung schleifen" + (oneFace?size gt 0)?then("", grit) + "."/>
  </#if>
  <#if framing?size gt 0>
    <@say "Kanten von " + lettersOf(framing) + " schleifen, die einer Füllung gegenüberstehen werden."/>
  </#if>
  <@say "Schleifmaschine nahe an Verbindungen flach halten, damit deren Kanten scharf bleiben, und von eingepassten " + lapped?then("Überblattungen und Wänden weg: Eine Überblattung, die einen Span verliert, ist lose", "Wänden und Enden weg: Eine Verbindung, die einen Span verliert, ist lose") + "."/>
  <@say "Leimflächen der Verbindungen lassen, wie die Säge sie ließ, und kein Ende dünner machen, das in ein anderes Teil kommt."/>
  <@say "Allen Staub abbürsten und weggeschliffene Zeichen auf eine Kante oder in eine Verbindung schreiben."/>
</#macro>

<#-- Woher ein Teil kommt: In einer Baugruppe, die auf der Werkbank liegt, wie sie will, sagt es das Bild. -->
<#-- Oben und unten sagen nichts, wenn das Möbel auf dem Rücken liegt: Dann weisen seine Enden und Teile den Weg. -->
<#function fromSide side><#return words[lying?then("lying-from.", "from.") + side]></#function>
<#function homeFrom>
  <#if mirroredHere && sides?filter(s -> s.parts?filter(p -> !p.places?seq_contains(s.from))?size gt 0)?size == 0><#return "jeweils von der eigenen Seite"></#if>
  <#if mirroredHere><#return joined(sides?map(s -> oneOf(s) + " " + fromSide(s.from)))></#if>
  <#return inPiece?then((firstFrom == "")?then(fromSide(from), words["from.two"]), "")>
</#function>
<#-- Spiegelbilder kommen von entgegengesetzten Seiten: Jedes wird mit seiner genannt. -->
<#assign mirroredHere = (sides![])?size gt 1>
<#function oneOf s><#return (sides?map(each -> plains(each.parts))?join("|") == sides?map(each -> plains(s.parts))?join("|"))?then(total(s.parts)?string, plains(s.parts))></#function>
<#function fromTold><#return inPiece || mirroredHere></#function>
<#function inFrom><#return mirroredHere?then(", ", " ") + homeFrom()></#function>
<#-- Auf der Werkbank lässt sich nichts von unten eindrehen. -->
<#function facingUp item><#return fromBelow(item)?then("Unterseite nach oben: ", fromBehind(item)?then("Rückseite nach oben: ", ""))></#function>
<#function fromBehind item><#return (upSide!"") == "back" && item.drivenFrom?join("") == "back"></#function>
<#function fromBelow item><#return !inPiece && !lying && item.drivenFrom?join("") == "bottom"></#function>
<#-- Zwei gerade Bewegungen; in einer Baugruppe so genannt, wie das Bild sie zeigt. -->
<#macro twoMoves>
  <#if firstFrom != "">
    <@say "Es braucht zwei gerade Bewegungen" + inPiece?then("", ", genannt, wie die Baugruppe im Möbel steht") + ": " + fulls(moving) + " " + words["from." + firstFrom] + " hineinbringen, " + beside + " neben " + pick(moving, "den Platz", "die Plätze") + ", und dann " + words["from." + from] + " an Ort und Stelle schieben."/>
  </#if>
</#macro>
<#function drivenHow item>
  <#if lying && item.through?size gt 0><#return " durch " + plains(item.through)></#if>
  <#if fromBelow(item) || fromBehind(item)><#return ""></#if>
  <#return (item.drivenFrom?size == 1)?then(" " + words["drive." + item.drivenFrom?first], "")>
</#function>

<#assign lying = (lies!"") != "">

<#assign washers = hardware?filter(h -> h.kind == "washer")>
<#-- Wie hoch die Mitte eines niedrigen Teils liegt, das ein anderes verdeckt. -->
<#macro hiddenMiddles what>
  <#list hiddenEdges as it>
    <@with "tape"/>
    <@say it.below + " unter der Oberkante von " + fulls(it.cover) + " anreißen: Dort treffen " + what + " die Mitte von " + fulls(it.parts) + ", dahinter verborgen und nur " + it.high + " hoch."/>
  </#list>
</#macro>
<#macro driving>
  <#if has("fit-slotted") && washers?size gt 0>
    <@say "Auf jede Schraube, die durch ein Langloch geht, eine Unterlegscheibe stecken: " + number(washers[0].count) + " im Ganzen."/>
  </#if>
  <#list hardware as each>
    <#if each.kind == "wood-screw">
      <#if each.piloted>
        <@say "Durch jedes Schraubenloch vorbohren, mit dem Bohrer und so tief ins Holz dahinter, wie bei diesem Schritt angegeben: Den Tiefenanschlag um die Länge des Durchgangslochs tiefer stellen, als die Tiefe der Vorbohrung angibt."/>
        <#if longBit>
          <@with "long-bit"/>
          <@say "Dicht neben einigen dieser Löcher steht Holz: dort lange Bohrer nehmen, sonst stößt das Bohrfutter an, und das Loch wird schief."/>
        </#if>
      <#else>
        <@say "Vorbohren für " + howMany("wood-screw", each.count) + "."/>
      </#if>
    <#elseif each.kind == "pocket-screw">
      <@say (each.joints == 1)?then("Verbindung", "Jede Verbindung") + " so spannen, dass die Teile nicht wandern, während die Schrauben ziehen."/>
    </#if>
    <#if each.kind == "other" && splined != ""><#elseif each.kind == "other">
      <@say facingUp(each) + many(each.title, each.count) + drivenHow(each) + " eintreiben."/>
      <#if has("fit-pegged")>
        <#if wait != "">
          <@say "Beim Eintreiben Leim nur auf die Holznägel geben, von denen es in der Anmerkung steht, und die anderen trocken lassen."/>
        </#if>
        <@say "Was von den Holznägeln vorsteht, knapp darüber absägen und flächenbündig stechen."/>
      </#if>
    <#elseif each.kind == "washer">
    <#elseif each.kind == "plug">
      <@say "Über jede Schraube einen Querholzpfropfen leimen, Faser in Richtung der des Teils, und hineinklopfen, bis er auf dem Kopf sitzt."/>
    <#elseif inserts?map(i -> i.kind)?seq_contains(each.kind)>
      <#if !has("fit-glue")><@say howMany(each.kind, each.count) + " trocken einsetzen, halb in jedes Teil."/></#if>
    <#elseif each.kind == "brad">
      <#local whereTo = (each.into?size gt 0)?then(" in " + fulls(each.into) + (each.count gt each.into?size)?then(", gleichmäßig verteilt,", ""), "")>
      <#if each.seen>
        <@with "nail-set"/>
        <@with "wood-filler"/>
      </#if>
      <@hiddenMiddles "die Stifte"/>
      <@say facingUp(each) + howMany("brad", each.count) + drivenHow(each) + whereTo + " eintreiben" + each.seen?then(", " + (each.count == 1)?then("den Kopf etwas unter die Fläche versenken und das Loch füllen: Man sieht es", "die Köpfe etwas unter die Fläche versenken und die Löcher füllen: Man sieht sie"), "") + "."/>
    <#elseif !["top-fastener", "rotating-fastener", "button"]?seq_contains(each.kind)>
      <@say facingUp(each) + howMany(each.kind, each.count) + drivenHow(each) + ((each.kind?ends_with("screw"))?then(" eindrehen.", " einsetzen."))/>
    </#if>
  </#list>
  <#if has("fit-slotted")>
    <@say "Wo eine Schraube durch ein Langloch geht, sie in die Mitte setzen und nur so weit eindrehen, bis " + (washers?size gt 0)?then("ihre Unterlegscheibe auf dem Holz liegt: Das Teil, das sie hält, muss sich bewegen können.", "ihr Kopf auf dem Holz liegt: Das Teil, das sie hält, muss sich bewegen können. Ihr Kopf muss breiter als das Langloch sein; ist er es nicht, eine Unterlegscheibe darunterlegen.")/>
  </#if>
</#macro>

<#macro flushing>
  <#if has("fit-plug")>
    <@say "Ist der Leim trocken, die Pfropfen knapp über der Fläche absägen und bündig stechen, von der Kante aus, von der die Faser ansteigt."/>
  </#if>
</#macro>

<#-- Zwei einer Art mit Namen; mehr als das mit ihren Zeichen. -->
<#function seatOf s><#return (s.on?size lte 1)?then(fulls(s.on), lettersOf(s.onMarks))></#function>
<#function atFaces s>
  <#local each = (s.each gt 0)?then(number(s.each) + " ", "")>
  <#return joined(s.faces?map(f -> each + words["at." + f]))>
</#function>
<#assign eachSide = {"edge": "jeder Kante", "end": "jedem Ende", "face": "jeder Fläche"}>
<#function fromEnds s>
  <#return (s.faces?size gt 1)?then(eachSide[s.side], sideOf(s.side, s.faces[0]))>
</#function>

<#-- Die Flächen, von denen man misst: Die von zwei Seiten sehen beide nach außen oder innen. -->
<#function measuredFaces s>
  <#if s.faces?size gt 1 && total(s.on) gt 1><#return sideNames[s.side] + s.inner?then(" innen", " außen") + " bei " + seatOf(s) + " jeweils"></#if>
  <#return fromEnds(s) + " von " + seatOf(s)>
</#function>

<#macro marking>
  <#list seats as s>
    <#if s.how == "from" && s.laidOver && inPiece && !lying>
      <@say fulls(s.on) + " " + s.distance + " über " + fulls(s.parts) + " hinausstehen lassen, " + joined(s.faces?map(f -> words["at." + f])) + (s.faces?size gt 1)?then(" gleich", "") + "."/>
    <#elseif s.how == "against" && !s.touches>
      <@say "ab " + measuredFaces(s) + " " + s.distance + " nach innen messen, dort auf " + (onto?size == 1 && total(onto) == 1)?then(fulls(onto), "dem, woran " + fulls(s.parts) + pick(s.parts, " gesetzt wird,", " gesetzt werden,")) + " " + (s.faces?size gt 1)?then("Linien ziehen und " + fulls(s.parts) + " mit den näheren Seiten daran setzen.", "eine Linie ziehen und " + fulls(s.parts) + " mit " + sideOf(s.nearSide, s.faces[0]) + " daran setzen.")/>
    <#elseif s.how == "from">
      <@say "Platz von " + fulls(s.parts) + " auf " + seatOf(s) + " anzeichnen: " + s.distance + " ab " + fromEnds(s) + " bis zur näheren Seite."/>
    <#elseif s.how == "middle">
      <@say "Auf " + seatOf(s) + " eine Linie für " + (hardware?filter(h -> h.kind == "brad")?size gt 0)?then("die Stifte", "die Schrauben") + " ziehen, an der Mitte dessen entlang, was dahinter liegt: " + s.distance + " ab " + fromEnds(s) + " für " + fulls(s.parts) + "."/>
    <#elseif s.how == "past">
      <@say fulls(s.parts) + " " + s.distance + " über " + seatOf(s) + " hinausstehen lassen, " + atFaces(s) + "."/>
    </#if>
  </#list>
</#macro>

<#assign opposite = {"left": "right", "right": "left", "front": "back", "back": "front", "bottom": "top", "top": "bottom"}>
<#function looksInwards t>
  <#if t.parts?size != 1 || t.parts[0].count != 1><#return false></#if>
  <#local at = t.parts[0].places>
  <#return t.faces?filter(f -> at?seq_contains(opposite[f]))?size == t.faces?size>
</#function>

<#-- Wie herum Teile hineinkommen: bevor sie hineinkommen. -->
<#macro turnedRound>
  <#local inward = (turned?size gt 1)?then(turned?filter(t -> t.term == "taper" && looksInwards(t))?size == turned?size, false)>
  <#if inward>
    <@say "Verjüngte Flächen von allen nach innen drehen" + (turned?filter(t -> t.drawn == "mirrored")?size gt 0)?then(": " + joined(turned?filter(t -> t.drawn == "drawn")?map(t -> plains(t.parts))) + " wie gezeichnet, " + joined(turned?filter(t -> t.drawn == "mirrored")?map(t -> plains(t.parts))) + " gespiegelt", "") + "."/>
  </#if>
  <#list inward?then([], turned) as t>
    <#if t.facing>
      <#if t?is_first>
        <@say ["top", "bottom"]?seq_contains(t.faces[0])?then("Eines der beiden Teile über die Enden wenden", "Eines der beiden Teile flach liegend um 180° drehen, sodass die Enden tauschen und die Unterseite unten bleibt") + ", damit " + (t.term == "sunk")?then("die gesenkten Löcher nach innen zeigen: die von ", "sich die zwei Nuten gegenüberstehen: die von ") + fulls(t.parts) + " " + facesWay[t.faces[0]] + "."/>
      </#if>
    <#elseif t.term != "sunk">
      <@say "Prüfen, dass bei " + fulls(t.parts) + (t.drawn == "")?then("", ", " + (t.drawn == "drawn")?then("wie gezeichnet", "gespiegelt") + ",") + " " + (t.term == "taper")?then((t.faces?size == 1)?then("die verjüngte Fläche", "die verjüngten Flächen"), (t.term == "pin-row")?then("die Fläche mit den Löchern der Bodenträger", "die Nut")) + " " + joined(t.faces?map(f -> facesWay[f])) + (t.faces?size == 1 || t.term != "taper")?then(" zeigt.", " zeigen.")/>
    </#if>
  </#list>
</#macro>

<#-- Whether what moves has an edge to keep flush with something. -->
<#function keptFlush><#return flush?size gt 0 || seats?filter(s -> s.how == "flush")?size gt 0></#function>

<#macro aligning>
  <#list seats as s>
    <#if s.how == "flush">
      <@say fulls(s.parts) + " bündig mit " + seatOf(s) + " halten, " + (s.twins?size gt 0)?then(joined(s.twins?map(t -> "das " + twinAt[t.place] + " Teil " + words["at." + t.face])), atFaces(s)) + "."/>
    <#elseif s.how == "against" && s.touches>
      <@say fulls(s.parts) + " an " + seatOf(s) + " schieben."/>
    </#if>
  </#list>
  <#list flush as f>
    <#local edgesOf = (f.faces?size == 1)?then("Kante ", "Kanten ") + joined(f.faces?map(face -> words["edge." + face]))>
    <#if flush?size == 1 && total(moving) == 1>
      <@say edgesOf + " bündig halten."/>
    <#else>
      <@say fulls(f.parts) + " bündig mit " + fulls(f.on) + " halten: " + edgesOf + "."/>
    </#if>
  </#list>
</#macro>

<#-- An dem, was am tiefsten liegt und gut hält; wo noch nichts gut hält, an dem, was flach liegt. -->
<#function liftedBy>
  <#local held = []>
  <#list careful as c><#local held = held + c.held?map(p -> p.mark)></#list>
  <#local free = lowest?filter(p -> !held?seq_contains(p.mark))>
  <#return fulls((free?size gt 0)?then(free, flatLowest))>
</#function>

<#-- Backen, die sich um das schließen, was zuunterst liegt, brauchen dort Platz. -->
<#macro turning>
  <#local jawsUnder = has("fit-glue") && (jawsUnder!false)>
  <#local bed = jawsUnder?then("auf zwei Leisten, damit die Backen der Zwingen darunterreichen", "auf eine Decke")>
  <#if lying && jawsUnder><@with "long-battens"/></#if>
  <#if lying && liesAlready>
    <@say "Das Werkstück liegt noch auf der " + lies + jawsUnder?then(": " + battened?then("prüfen, dass die Leisten darunter den Backen der Zwingen Platz lassen", "auf zwei Leisten heben, damit die Backen der Zwingen darunterreichen"), "") + "."/>
  <#elseif lying && turnedOver>
    <@say "Das bisher Zusammengebaute wenden, auf die " + lies + ", " + bed + "."/>
  <#elseif lying && !onEdge>
    <@say "Das bisher Zusammengebaute auf die " + lies + " legen, " + bed + "."/>
  <#elseif jawsUnder && inPiece>
    <@with "long-battens"/>
    <#if careful?size gt 0>
      <@say "Zu zweit nur an " + liftedBy() + " heben."/>
    </#if>
    <@say "Das bisher Zusammengebaute auf zwei Leisten oder Klötze setzen, damit die Backen der Zwingen darunterreichen."/>
  </#if>
</#macro>

<#-- Was sofort befestigt wird, lässt sich nicht mehr in den Winkel drücken. -->
<#assign fastened = hardware?filter(h -> ["wood-screw", "pocket-screw", "brad"]?seq_contains(h.kind) || (h.kind == "other" && (splined!"") == ""))?size gt 0>
<#function beforeFastening>
  <#local kinds = hardware?map(h -> h.kind)>
  <#local driven = ["wood-screw", "pocket-screw"]?filter(kind -> kinds?seq_contains(kind))?size gt 0>
  <#if kinds?seq_contains("other")><#return "Bevor etwas eingetrieben wird"></#if>
  <#return "Bevor " + kinds?seq_contains("brad")?then(driven?then("geschraubt oder genagelt", "genagelt"), "geschraubt") + " wird">
</#function>
<#macro squareFirst>
  <#if diagonal != "">
    <@say beforeFastening() + ", beide Diagonalen von Außenecke zu Außenecke messen: Jede soll " + diagonal + " lang sein; die längere zusammendrücken, bis sie übereinstimmen."/>
  <#elseif acrossFeet != "">
    <@with "tape"/>
    <@say beforeFastening() + ", beide Diagonalen über die Füße messen, von Außenecke zu Außenecke: Jede soll " + acrossFeet + " lang sein; die längere zusammendrücken, bis sie übereinstimmen."/>
  </#if>
</#macro>

<#macro squaring>
  <#if diagonal + acrossFeet == "" && has("fit-glue") && corner && !mitred && !crate && !laidOn>
    <@say "Jede Ecke mit dem Winkel prüfen, solange sich die Zwingen noch verschieben lassen."/>
  </#if>
  <#if diagonal != "">
    <@with "tape"/>
    <@say "Beide Diagonalen von Außenecke zu Außenecke messen: Jede soll " + diagonal + " lang sein."/>
    <@say "Unterscheiden sie sich, die längere zusammendrücken, bis sie übereinstimmen."/>
  <#elseif acrossFeet != "">
    <@say "Beide Diagonalen über die Füße messen, von Außenecke zu Außenecke: Jede soll " + acrossFeet + " lang sein."/>
    <@say "Unterscheiden sie sich, die Zwingen verschieben, bis sie übereinstimmen."/>
  </#if>
</#macro>

<#macro standing>
  <#if lying && staysLying>
    <@say "Für den nächsten Schritt auf der " + lies + " liegen lassen."/>
  <#elseif lying && !turnedNext && !staysClamped>
    <@say "Wieder aufstellen."/>
  </#if>
</#macro>

<#-- Was in beiden Teilen einer Verbindung liegt. -->
<#assign inserts = hardware?filter(h -> ["dowel", "biscuit", "loose-tenon"]?seq_contains(h.kind))>

<#-- Leim zuerst auf einer Seite, dann auf der anderen. -->
<#macro insertGlued each withFaces>
  <#local room = (each.kind == "dowel")?then("Löcher", (each.kind == "biscuit")?then("Schlitze", "Zapfenlöcher"))>
  <@say "Wände der " + (each.kind == "dowel")?then("Löcher", (each.kind == "biscuit")?then("Schlitze", "Zapfenlöcher")) + " in " + fulls(each.first) + " mit Leim bestreichen und dort zuerst einsetzen: " + howMany(each.kind, each.count) + "."/>
  <@say "Leim in die " + room + " von " + fulls(each.against) + " geben" + withFaces?then(", und einen dünnen Auftrag auf die Flächen, die zusammenkommen", "") + (each.kind == "biscuit")?then("; sofort weitermachen, denn ein Flachdübel quillt und sitzt in Minuten fest", "") + "."/>
</#macro>

<#macro glueing>
  <@turning/>
  <#if base?size gt 0>
    <#if onEdge || total(base) == 1 && !lying && (from!"") == "bottom" && hardware?filter(h -> h.drivenFrom?join("") == "top")?size gt 0>
      <@say fulls(base) + " auf eine lange Kante stellen: So " + (jointCount == 1)?then("ist die Verbindung", "sind die Verbindungen") + " ebenso zu erreichen wie die Fläche, von der aus geschraubt wird."/>
    <#else>
      <@say fulls(base) + " bereitlegen, " + (upSide == "back")?then("Rückseite oben, ", "") + (total(base) == 1 && jointCount == 1)?then("Verbindung", "Verbindungen") + " griffbereit."/>
    </#if>
  </#if>
  <@marking/>
  <@twoMoves/>
  <#if tiers?size gt 1>
    <#if !triedDry>
      <@say "Trocken zusammenbauen, zuerst " + tiers?map(t -> fulls(t.moving))?join(", dann ") + ", und prüfen, dass jede Verbindung schließt."/>
      <@say "Wieder auseinandernehmen und die Teile in dieser Reihenfolge neben die Zwingen legen: Ist der Leim aufgetragen, bleibt keine Zeit, sie zu suchen."/>
    <#else>
      <@say "Neben die Zwingen legen, zuerst " + tiers?map(t -> fulls(t.moving))?join(", dann ") + ": Ist der Leim aufgetragen, bleibt keine Zeit, sie zu suchen."/>
    </#if>
  <#elseif !triedDry>
    <@say fulls(moving) + " trocken an Ort und Stelle bringen" + fromTold()?then(", " + homeFrom() + ",", "") + " und prüfen, dass jede Verbindung schließt."/>
    <@say "Wieder abnehmen."/>
  </#if>
  <@turnedRound/>
  <#if has("fit-glue") && !crate>
    <@say "Zwingen auf Maß stellen, bevor Leim aufgetragen wird."/>
  </#if>
  <#if mitred>
    <@say "Auf beide Flächen jeder Gehrung dünn Leim streichen, dem Hirnholz einige Minuten geben, ihn aufzusaugen, und ein zweites Mal bestreichen."/>
    <#if splined == "frame">
      <@say "In einen Schlitz jeder Gehrung eine Feder" + madeMark + " leimen, ihre Faser, oder die ihrer Deckfurniere, quer zur Fuge und ihre Enden gleich weit vorstehend, und Leim in den anderen Schlitz streichen."/>
    </#if>
  </#if>
  <#assign laps = glueTerms?filter(t -> ["half-lap", "cross-lap", "bridle cheek", "box joint"]?seq_contains(t.term))>
  <#assign dovetails = glueTerms?filter(t -> ["pins", "half-blind pins"]?seq_contains(t.term))>
  <#if dovetails?size gt 0 && dovetails?size == glueTerms?size>
    <@say "Flanken der Schwalben und der Zinken dünn mit Leim bestreichen; Hirnholz braucht kaum welchen."/>
  <#elseif laps?size gt 0 && laps?size == glueTerms?size>
    <@say "Alle Flächen dünn mit Leim bestreichen, die zusammenkommen, auch die Brüstungen: " + joined(laps?map(t -> (t.term == "bridle cheek")?then(words["joint.bridle"], cutName(t.term, t.count)))) + "."/>
  <#elseif glueTerms?size gt 0>
    <#assign letIn = jointCount - buttedCount>
    <@say "Dünn mit Leim bestreichen: " + joined(glueTerms?map(t -> cutName(t.term, t.count))) + " und " + glueTerms?map(t -> t.term)?seq_contains("mortise")?then((letIn == 1)?then("den Zapfen, der", "die Zapfen, die"), (letIn == 1)?then("das Ende, das", "die Enden, die")) + " " + (letIn == 1)?then("hineinkommt", "hineinkommen") + glueTerms?map(t -> t.term)?seq_contains("groove")?then("; in einer Nut nur, wo " + (jointCount == 1)?then("es sitzt", "sie sitzen"), haunchInGroove?then("; in einer Nut nur, wo " + (jointCount == 1)?then("der Federansatz sitzt", "die Federansätze sitzen"), "")) + "."/>
    <#list butted as b>
      <@say "Auch bestreichen, wo " + fulls(b.one) + " mit ebener Fläche auf " + fulls(b.other) + " trifft."/>
    </#list>
  <#elseif inserts?size gt 0>
    <#list inserts as each>
      <@insertGlued each each?is_last/>
    </#list>
  <#elseif !mitred>
    <@say "Flächen, die zusammenkommen, dünn mit Leim bestreichen."/>
  </#if>
  <#if glueTerms?size gt 0>
    <#list inserts as each>
      <@insertGlued each false/>
    </#list>
  </#if>
  <#list tiers as t>
    <#if !t.glued>
      <@say fulls(t.moving) + " ohne Leim in " + pick(t.moving, "die zugehörigen", "ihre") + " Nuten schieben" + t.solid?then(": Das Holz muss frei quellen und schwinden können", "") + "."/>
    <#elseif glueTerms?size == 0 && inserts?size == 0>
      <@say fulls(t.moving) + triedDry?then(fromTold()?then(", " + homeFrom() + ",", "") + " an Ort und Stelle setzen.", " wieder an Ort und Stelle setzen.")/>
    <#elseif glueTerms?size gt 0 && dovetails?size == glueTerms?size>
      <@say fulls(t.moving) + " mit Klüpfel und einem Klotz über " + t.pinned?then(pick(t.moving, "dem Ende gegenüber", "jedem Ende gegenüber"), "den Schwalben") + " ganz eintreiben" + (jointCount gt 1)?then(", beide Enden abwechselnd", "") + "."/>
    <#else>
      <@say fulls(t.moving) + (triedDry && fromTold())?then(", " + homeFrom() + ",", "") + " ganz einschieben."/>
    </#if>
  </#list>
  <@aligning/>
</#macro>

<#-- Was in Nuten gleitet, probiert, solange es roh ist. -->
<#macro tryingLid>
  <@title plains(hung) + " in den Nuten probieren"/>
  <@say plains(hung) + " über die ganze Länge ohne Kraft in die Nuten von " + fulls(slidIn) + " schieben und wieder herausziehen."/>
  <@say "Wo es klemmt, die Kante mit einem Bleistift schwärzen und noch einmal einschieben: Wo sie berührt, wischt sich der Strich ab. Dort einen Span abhobeln oder die Nut ausräumen und wieder probieren."/>
  <@say "Es soll mit etwas Spiel laufen und nicht klappern: In feuchter Luft wächst es quer zur Faser."/>
  <@say "Jetzt machen, solange Nuten und Flächen roh sind und ein Hobel keine Spur in der Oberfläche hinterlässt."/>
</#macro>

<#macro trying>
<#if has("trial-lid")><@tryingLid/><#return></#if>
  <#assign slides = tried.kind?ends_with("slide")>
  <@title slides?then("Schubkastenführungen", howMany(tried.kind, tried.count)) + " anbringen und " + plains(hung) + " zur Probe einhängen"/>
  <@hanging tried/>
  <#if slides && tried.screws gt 0>
    <@say "Für diese zwei jeder Schiene vorbohren" + bitGiven?then(", wie bei diesem Schritt angegeben,", "") + " und je eine Schraube eindrehen; die Löcher dazwischen warten, bis die Führungen endgültig angebracht werden" + tried.back?has_content?then(", bei Schritt " + tried.back?first + ", wo ein Bild alle zeigt", "") + "."/>
  </#if>
  <#if slides>
    <@say plains(hung) + " einhängen und prüfen, dass " + pick(hung, "er", "jeder") + " über die ganze Länge frei läuft und ganz schließt."/>
    <@say pick(hung, "Die Front", "Jede Front") + " auf dünnen Unterlagen in ihre Öffnung stellen: Wo die Fuge zu eng ist, die Kante jetzt hobeln, solange sie roh ist."/>
    <#if keptFronts?size gt 0>
      <@say "Von " + fulls(keptFronts) + " nichts abhobeln, denn die Maserung läuft in das über, woraus sie geschnitten wurde: stattdessen die Öffnung nacharbeiten."/>
    </#if>
  <#else>
    <@say plains(hung) + " mit einer oder zwei Schrauben in jedem Band einhängen und auf dünnen Unterlagen schließen."/>
    <@say "Wo die Fuge zu eng ist, die Kante der Tür jetzt hobeln, solange sie roh ist; wo sie schief hängt, " + (tried.kind == "butt-hinge")?then("eine Aussparung nachstechen oder mit Papier unterlegen", "an den Schrauben der Bänder drehen oder eine Platte versetzen") + "."/>
  </#if>
  <@say "Alles wieder abnehmen und " + slides?then("Schrauben und Führungen jedes Schubkastens", "Schrauben und Bänder jeder Tür") + " zusammen aufheben, mit ihrem Platz beschriftet."/>
</#macro>

<#-- Kanten, die über eine Verbindung weiterlaufen. -->
<#macro shaping>
  <@cutting/>
  <@say "Sie laufen über die Verbindungen weiter: alles in einem Zug machen, jetzt, da die Teile zusammen sind" + acrossGlue?then(" und seit dem Leimen " + cured + " vergangen sind", "") + ", und langsam gehen, wo die Faser die Richtung wechselt."/>
  <#if acrossGlue>
    <@say "Zwingen kommen nach " + clampTime + " ab, aber erst in " + cured + " ist der Leim hart genug für einen Fräser."/>
  </#if>
</#macro>

<#macro dryFitting>
  <@title (together?size == 0)?then("Möbel", plains(together)) + " trocken zusammenbauen"/>
  <@say letters() + " ohne Leim zusammenbauen, in der Reihenfolge der Schritte, die folgen."/>
  <#if has("dry-fit-clamped")>
    <@say "Zwingen auf Maß stellen und jede Verbindung damit schließen; wo eine offen bleibt, nachstechen, bis sie sich von Hand schließt."/>
  <#else>
    <#if buttedDry?size gt 0 && onlyButted && !leaning>
      <@say "Jede Verbindung mit einer Zwinge darüber zusammenziehen, denn ebene Flächen hält sonst noch nichts; wo eine offen bleibt, das Ende nacharbeiten, bis sie schließt."/>
    <#else>
      <@say "Jede Verbindung von Hand schließen; wo eine offen bleibt, nachstechen, bis sie schließt."/>
      <#if buttedDry?size gt 0>
        <@say lettersOf(buttedDry) + " liegen mit ebenen Flächen aneinander, wo noch nichts sie hält: Sie " + leaning?then("von Hand", "mit einer Zwinge über der Verbindung") + " zusammendrücken, während man die anderen ansieht."/>
      </#if>
    </#if>
    <#if buttedDry?size gt 0 && !leaning>
      <@with "bar-clamps"/>
    </#if>
  </#if>
  <#if letInDry?size gt 0>
    <@say joined(letInDry?map(i -> howMany(i.kind, i.count))) + " trocken einsetzen und mit den Verbindungen wieder herausziehen."/>
  </#if>
  <#if lids?size gt 0>
    <@say "Auch " + fulls(lids) + " in die Nuten schieben: Was klemmt, lässt sich vor dem Leimen weit leichter beheben."/>
  </#if>
  <@say "Prüfen, dass " + (together?size == 0)?then("das Zusammengesteckte " + leaning?then("fest", "rechtwinklig") + " steht und nichts wackelt", pick(together, "die Baugruppe flach liegt", "jede Baugruppe flach liegt")) + (leaning || !has("dry-fit-clamped"))?then("", ", und dass die zwei Diagonalen von allem Rechtwinkligen übereinstimmen") + "."/>
  <@say "Auf beide Seiten jeder Verbindung dieselbe Nummer schreiben und " + (whole?size gt 0)?then("wieder auseinandernehmen; " + plains(whole) + pick(whole, " bleibt", " bleiben") + " ganz.", "alles wieder auseinandernehmen.")/>
</#macro>

<#function countedOf kind>
  <#local count = 0>
  <#list hardware as h><#if h.kind == kind><#local count = count + h.count></#if></#list>
  <#return howMany(kind, count)>
</#function>

<#-- On a curved face some open less than the widest place asks. -->
<#function opensTo c><#return c.curved?then("bis zu ", "") + c.opening></#function>

<#-- Zwingen an denselben Teilen werden einmal genannt: wie viele welches Teil halten, das hineinkommt. -->
<#-- Where battens make fewer clamps do, it is told where they press and not how many would be best. -->
<#macro clampSettings counted=true>
  <#list clamps as c>
    <#if !counted>
      <@say "Zwingen " + words["clamp." + c.axis] + " über die Verbindungen setzen, Backen auf " + jawPairs(c.jaws)?join(" und auf ") + ": Öffnung " + opensTo(c) + ", mit Zulagen mehr."/>
      <#continue>
    </#if>
    <#local set = (clampsOfAll!(turns gt 1 && !forOne))?then("Im Ganzen ", "") + (c.count == 1)?then("eine Zwinge", number(c.count) + " Zwingen") + " " + words["clamp." + c.axis] + " über die " + (c.count == 1)?then("Verbindung", "Verbindungen") + " setzen">
    <#if jawsTold(c.jaws)?size == 1>
      <@say set + ", Backen auf " + fulls(c.jaws[0].on) + (c.jaws?size gt 1)?then(", in einer Linie mit den Teilen dazwischen", "") + ": Öffnung " + opensTo(c) + ", mit Zulagen mehr."/>
    <#else>
      <@say set + "; Öffnung " + opensTo(c) + ", mit Zulagen mehr: " + jawsTold(c.jaws)?join(", ") + "."/>
    </#if>
  </#list>
  <#list panelsPressed as p>
    <@say "Die Backen auf " + fulls(p.panel) + " mit einer Zulage unter jeder genau hinter " + fulls(p.carriers) + " setzen: Daneben gibt ein so dünnes Teil nur nach."/>
  </#list>
  <#if cauled?size gt 0>
    <@with "long-battens"/>
    <@say "Dort erreicht keine Zwinge " + fulls(cauled) + ": eine steife Leiste quer darüberlegen, zum Werkstück hin leicht ballig gehobelt, und ihre beiden Enden niederspannen, damit ihre Mitte drückt."/>
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
      <#local told = told + [total(like) + " mit den Backen auf " + fulls(j.on) + (like?size gt 1)?then(", in einer Linie mit den Teilen dazwischen", "")]>
    </#if>
  </#list>
  <#return told>
</#function>

<#-- Wie Befestiger verteilt werden: je fünf in Zarge × 2 (B) und zwei in Riegel (C). -->
<#function sharedOut kind>
  <#local shares = []>
  <#list hardware?filter(h -> h.kind == kind) as h><#local shares = shares + h.held></#list>
  <#return joined(shares?map(s -> (total(s.parts) gt 1)?then("je ", "") + s.each + " in " + fulls(s.parts)))>
</#function>
<#function holders kind><#return "den Teilen, die sie halten,"></#function>
<#function inGrooves kind>
  <#local held = hardware?filter(h -> h.kind == kind)?first.held>
  <#return held?size gt 0 && held?first.term?contains("groove")>
</#function>

<#macro fitting>
  <#assign rotating = has("fit-rotating-fastener")>
  <#if has("fit-top-fastener") || has("fit-button") || rotating>
    <@title plains(moving) + " befestigen"/>
    <#if rotating>
      <@say countedOf("rotating-fastener") + " in die Aussparungen schrauben, " + sharedOut("rotating-fastener") + ", gerade so fest, dass sie sich noch drehen."/>
    </#if>
    <#if overhung>
      <@say fulls(moving) + " auflegen, mit den Überständen, die bei diesem Schritt angegeben sind."/>
    <#else>
      <@say fulls(moving) + " auflegen und den Überstand an beiden Enden ausgleichen."/>
    </#if>
    <#if rotating>
      <@say "Jeden so drehen, dass er rechtwinklig zu dem steht, woran er geschraubt ist: Weil er sich dreht, kann die Platte quellen und schwinden."/>
    </#if>
    <#if has("fit-button")>
      <@say countedOf("button") + " aus einem Reststück schneiden, Faser längs der Zunge, und prüfen, dass jede Zunge von Hand in ihrem Schlitz gleitet."/>
      <@say "Zungen in ihre " + inGrooves("button")?then("Nuten", "Schlitze") + " innen an " + holders("button") + " schieben, " + sharedOut("button") + ", und vor dem Ende jeder Zunge Luft lassen, wo sich die Platte darauf zu bewegt, damit sie quellen und schwinden kann."/>
    </#if>
    <#if has("fit-top-fastener")>
      <#local groove = inGrooves("top-fastener")>
      <@say countedOf("top-fastener") + " in die " + groove?then("Nuten", "Schlitze") + " innen an " + holders("top-fastener") + " einhaken, " + sharedOut("top-fastener") + groove?then(", gleichmäßig verteilt", "") + "."/>
      <#if said?size == 0><@say groove?then("Wo eine Nut in Faserrichtung der Platte läuft, jede Zunge etwas vor dem Grund ihrer Nut lassen, damit die Platte quellen und schwinden kann.", "Jeden etwas vor dem Ende seines Schlitzes lassen, damit die Platte quellen und schwinden kann.")/></#if>
    </#if>
    <@with "depth-stop"/>
    <@with "screwdriver"/>
    <@say closedBelow?then("Von innen", "Von unten") + " vorbohren" + bitGiven?then(", mit dem bei diesem Schritt angegebenen Bohrer, Tiefenanschlag auf der dort angegebenen Tiefe", ", mit Tiefenanschlag") + ", damit der Bohrer nicht durch die Platte kommt."/>
    <@say "Durch jeden eine Schraube nach oben in die Platte drehen und nicht mit Gewalt anziehen."/>
  <#elseif has("fit-front")>
    <@title plains(moving) + (inUnits?size gt 0)?then(" an " + plains(inUnits), "") + " befestigen"/>
    <#if total(moving) gt 1>
      <@say "Fronten nacheinander befestigen, die unterste zuerst: " + fulls(moving) + "."/>
    </#if>
    <#local held = words["kind." + handle]>
    <#local screwed = has("fit-front-screwed") && !has("fit-front-taped")>
    <#if !screwed || has("fit-front-turning")>
      <@say "Doppelseitiges Klebeband vorn auf den Kasten kleben und die Schutzfolie abziehen" + screwed?then(": An nur einer Schraube würde sich die Front drehen", "") + "."/>
    </#if>
    <@say "Schubkasten ganz hineinschieben."/>
    <@say (total(moving) gt 1)?then("Seine Front", fulls(moving)) + " auf dünnen Unterlagen in die Öffnung stellen und " + (gaps == "all")?then("die Fuge ringsum ausgleichen", (gaps == "pairs")?then("die Fugen ausgleichen, links gegen rechts und oben gegen unten", "die Fugen auf die genannten Maße bringen")) + "."/>
    <#if !screwed>
      <@say "An das Klebeband drücken."/>
    <#else>
      <@say has("fit-front-turning")?then("An das Klebeband drücken und von vorn durch das Loch für den " + held + " eine Hilfsschraube ein Stück weit in den Kasten drehen; sie muss kürzer als beide zusammen sein, ihr Kopf breiter als das Loch.", "Dort halten und von vorn durch die Löcher für den " + held + " zwei Hilfsschrauben ein Stück weit in den Kasten drehen; sie müssen kürzer als beide zusammen sein, ihre Köpfe breiter als die Löcher.")/>
    </#if>
    <@say "Schubkasten vorsichtig herausziehen" + screwed?then("", ", an einer Schraube oder einem Haken in einem Loch für den " + held + " oder an seiner Unterkante,") + " und die Front an den Kasten spannen."/>
    <#if total(moving) gt 1>
      <#list hardware?filter(h -> h.kind == "wood-screw") as h>
        <@say "Durch jedes Schraubenloch vorbohren" + h.piloted?then(", mit dem Bohrer, der bei diesem Schritt angegeben ist, und so tief ins Holz dahinter, wie dort steht,", "") + " und " + (h.count % total(moving) == 0)?then(howMany("wood-screw", h.count / total(moving)), "durch jedes eine Schraube") + drivenHow(h) + " eindrehen."/>
      </#list>
    <#else>
      <@driving/>
    </#if>
    <#if screwed>
      <@say has("fit-front-turning")?then("Die Hilfsschraube herausnehmen.", "Die Hilfsschrauben herausnehmen.")/>
    </#if>
    <#if has("fit-front-drilled")>
      <@say "Ein Reststück hinter den Kasten spannen und von vorn durch die Löcher für den " + held + " mit dem bei diesem Schritt angegebenen Bohrer weiterbohren, sodass Front und Kasten in einer Flucht gebohrt sind."/>
    <#elseif !screwed>
      <@say "Wo die Löcher für den " + held + " in Front und Kasten sich nicht treffen, von vorn noch einmal durchbohren."/>
    </#if>
    <@say "Schubkasten hineinschieben und die Fuge noch einmal ansehen; der " + held + " kommt zuletzt daran."/>
  <#elseif has("fit-door")>
    <@title plains(moving) + " einhängen"/>
    <#if total(moving) gt 1>
      <@say "Nacheinander einhängen: " + fulls(moving) + "."/>
    </#if>
    <#if hangers?seq_contains("concealed-hinge")>
      <@say pick(moving, fulls(moving), "Jede") + " offen in der Öffnung halten und die Arme der Topfbänder auf ihre Platten setzen, das obere zuerst."/>
      <@say "Vorsichtig schließen und die Fuge ringsum ansehen."/>
      <@say "An den Schrauben der Bänder drehen, um seitlich, in der Höhe und in der Tiefe zu verstellen, bis die Fuge gleichmäßig ist und die Tür bündig schließt."/>
    <#elseif tried>
      <@say pick(moving, fulls(moving), "Jede") + " offen in der Öffnung halten und in den zweiten Lappen jedes Bandes eine Schraube drehen."/>
      <@say "Schließen und die Fuge ansehen; ist sie wie bei der Probe, die anderen Schrauben eindrehen."/>
    <#else>
      <@say pick(moving, fulls(moving), "Jede") + " auf dünnen Unterlagen in der Öffnung festkeilen, sodass " + (gaps == "all")?then("die Fuge ringsum gleichmäßig ist", (gaps == "pairs")?then("die Fugen gleichmäßig sind, links gegen rechts und oben gegen unten", "die Fugen den genannten Maßen entsprechen")) + "."/>
      <@say "Öffnen, abstützen und in den zweiten Lappen jedes Bandes eine Schraube drehen."/>
      <@say "Schließen und die Fuge ansehen: eine Aussparung tiefer stechen oder mit Papier unterlegen, bis die Fuge gleichmäßig ist."/>
      <@say "Die anderen Schrauben eindrehen."/>
    </#if>
  <#elseif has("fit-loose")>
    <#if hangers?seq_contains("under-slide")>
      <@title plains(moving) + " einhängen"/>
      <@say "Beide Laufschienen aus dem Korpus ziehen und " + fulls(moving) + " darauf legen."/>
      <@say "Hineinschieben, bis die Haken hinten und die Rasten unter der Front gegriffen haben."/>
      <@say "Prüfen, dass " + pick(moving, "er", "jeder") + " frei läuft, waagerecht liegt und ganz schließt; sonst an den Höhenschrauben der Rasten drehen."/>
    <#elseif hangers?seq_contains("slide")>
      <@title plains(moving) + " einhängen"/>
      <@say "Laufschienen aus dem Korpus ziehen und die Schienen des Schubkastens daraufsetzen."/>
      <@say fulls(moving) + " sanft hineinschieben, bis " + pick(moving, "er", "jeder") + " hinten anschlägt."/>
      <#if frontLater>
        <@say "Prüfen, dass " + pick(moving, "er", "jeder") + " über die ganze Länge frei läuft und waagerecht liegt."/>
      <#else>
        <@say "Die Fuge um die Front ansehen und die Führungen versetzen, bis sie gleichmäßig ist."/>
      </#if>
    <#elseif hangers?seq_contains("shelf-pin")>
      <@title plains(moving) + " auf die Bodenträger legen"/>
      <@twoMoves/>
      <@say fulls(moving) + inFrom() + " hineinbringen."/>
      <@say "Auf die Bodenträger absenken und auf jede Ecke drücken, um zu prüfen, dass nichts wackelt."/>
    <#else>
      <@title plains(moving) + " einsetzen"/>
      <@twoMoves/>
      <@say fulls(moving) + inFrom() + " hineinbringen und absetzen."/>
    </#if>
  <#elseif has("fit-glue") || has("fit-glue-held")>
    <#if whole?size gt 0 && tiers?size gt 1>
# ${plains(whole)?cap_first} verleimen
    <#else>
      <@title plains(gluing) + ontoWords() + " leimen"/>
    </#if>
    <@glueing/>
    <#if fastened><@squareFirst/></#if>
    <@driving/>
    <#if has("fit-glue") && laidOn>
      <@with "long-battens"/>
      <#local fewer = total(clamps) gt shopClamps>
      <@clampSettings !fewer/>
      <#if fewer>
        <@say "Die Werkstatt hat " + number(shopClamps) + " Zwingen: steife Leisten, zum Werkstück hin leicht ballig, an jeder Leimkante entlang legen. Zuerst ihre Enden niederspannen, eine Zwinge für beide, wo zwei Leisten sich treffen, dann mit den übrigen die Mitte der langen; wo eine Fuge offen bleibt, eine weitere Zwinge leihen."/>
      </#if>
      <@say "Leisten unter die Backen legen" + (clamps?size gt 0)?then(" und von der Mitte nach außen anziehen, gerade so fest, dass jede Verbindung schließt.", " und an jeder Leimkante entlang niederspannen, von der Mitte nach außen.")/>
    <#elseif has("fit-glue") && mitred>
      <@say "Gehrungen mit einem Bandspanner zusammenziehen oder mit Zwingen an schrägen Klötzen, und darauf achten, dass keine Ecke an der anderen entlangrutscht."/>
      <#if splined == "case">
        <@say "Unter der Spannung in jeden Schlitz von der Kante her eine Feder" + madeMark + " schieben, mit etwas Leim auf beiden Flächen und der Faser quer zur Fuge; ist der Leim trocken, bündig schneiden."/>
      </#if>
    <#elseif has("fit-glue") && crate>
      <@say "Überblattungen ineinanderdrücken, bis die Kanten bündig liegen: Sie halten die Teile, und es braucht keine Zwinge, nur ein Gewicht darauf."/>
      <@say "Mit dem Winkel prüfen, dass sie sich rechtwinklig kreuzen, bevor der Leim anzieht."/>
    <#elseif has("fit-glue")>
      <@clampSettings/>
      <#if strips?size gt 0>
        <@with "long-battens"/>
        <@say "Unter die Backen entlang " + fulls(strips) + " " + pick(strips, "eine steife, zum Werkstück hin leicht ballige Leiste", "steife, zum Werkstück hin leicht ballige Leisten") + " legen: Ein so dünner Streifen schließt nur dort, wo eine Zwinge steht."/>
      </#if>
      <#if clampsBare>
        <@say "Wo die Flächen schräg stehen, auf denen die Backen sitzen würden, zwischen schräg geschnittenen Zulagen spannen oder einen Gurt um das Werkstück ziehen."/>
      </#if>
      <@say (clamps?size == 0)?then("Über jede geleimte Verbindung spannen, gerade so fest, dass sie schließt.", ((clamps?size == 1 && clamps[0].count == 1)?then("Anziehen", "Abwechselnd anziehen")) + ", gerade so fest, dass jede Verbindung schließt.")/>
      <#if laps?filter(t -> t.term != "box joint")?size gt 0>
        <@say "Über jede dieser Verbindungen eine kleine Zwinge mit Zulagen setzen, damit die Flächen zusammengedrückt werden."/>
      </#if>
    </#if>
    <#if !fastened><@squaring/></#if>
    <@say "Austretenden Leim mit einem feuchten Tuch abwischen, bevor er eine Haut bildet."/>
    <#if wait != "">
      <@say (has("fit-glue") && !crate)?then("Zwingen " + (turns gt 1)?then("jedes Mal " + waitEach, wait) + " angesetzt lassen, oder so lange, wie das Etikett des Leims sagt.", "Leim " + wait + " abbinden lassen, oder so lange, wie sein Etikett sagt, bevor das Werkstück bewegt wird.")/>
    </#if>
    <#if splined == "frame" && mitred>
      <@say "Ist der Leim hart, die Enden der Federn knapp über der Fläche absägen und zur Mitte des Teils hin bündig stechen, bevor eine Kante bearbeitet wird."/>
    </#if>
    <@flushing/>
    <@standing/>
  <#elseif has("fit-first") && hardware?size == 0 && base?size == 0 && onto?size == 0>
    <@title plains(moving) + " aufstellen"/>
    <@say fulls(moving) + " auf ebenem Boden aufrecht stellen und prüfen, dass nichts wackelt."/>
    <@with "wedge"/>
    <@with "handsaw"/>
    <@say "Wo ein Bein zu kurz ist, einen dünnen Keil darunterschieben und an den anderen Beinen so viel abnehmen, wie der Keil dort dick ist."/>
  <#elseif has("fit-lid")>
    <@title plains(moving) + " in die Nuten schieben"/>
    <@twoMoves/>
    <@with "paraffin-wax"/>
    <@say "Etwas Paraffin auf die Kanten von " + fulls(moving) + " und in die Nuten reiben."/>
    <@say fromTold()?then(homeFrom() + " einschieben", "Einschieben") + ", so weit die Nuten gehen, herausziehen und wieder ganz einschieben: Nichts soll klemmen."/>
    <@say "Wo es reibt, die Kante nachhobeln, die in der Nut läuft und keine Oberfläche hat, und wieder wachsen. Leim kommt nicht in ihre Nähe."/>
  <#elseif hardware?size == 0 && has("fit-panel")>
    <@title plains(moving) + " in die Nuten schieben"/>
    <@twoMoves/>
    <@say fulls(moving) + fromTold()?then(inFrom(), "") + " einschieben bis zum Grund der Nut."/>
    <#if movingSolid>
      <@say "Keinen Leim verwenden: Das Holz muss frei quellen und schwinden können."/>
    <#else>
      <@say "In den Nuten keinen Leim verwenden."/>
    </#if>
  <#else>
    <@title plains(moving) + ontoWords() + (hardware?map(each -> each.kind)?seq_contains("wood-screw") || hardware?map(each -> each.kind)?seq_contains("pocket-screw"))?then(" schrauben", (hardware?size gt 0)?then(" befestigen", " anbringen"))/>
    <@turning/>
    <#if base?size gt 0>
      <@say fulls(base) + " bereitlegen" + (has("fit-pegged") && hardware?filter(h -> fromBelow(h))?size gt 0)?then(", Unterseite nach oben", "") + "."/>
    </#if>
    <@marking/>
    <#if has("fit-panel")>
      <@twoMoves/>
      <@say fulls(moving) + fromTold()?then(inFrom(), "") + " ohne Leim einschieben" + keptFlush()?then("", " bis zum Grund der Nut") + "."/>
    <#else>
    <#if acrossGrain>
      <@say "In der Nut keinen Leim verwenden, oder nur auf " + inch?then("wenigen Zoll", "80 mm") + " in der Mitte: Das Holz, das quer darüber liegt, muss frei quellen und schwinden können."/>
    </#if>
    <@turnedRound/>
    <@twoMoves/>
    <#if firstFrom == "">
      <@say fulls(moving) + inPiece?then(inFrom() + " an Ort und Stelle bringen", mirroredHere?then(", " + homeFrom() + ",", "") + " an Ort und Stelle setzen") + "."/>
    </#if>
    </#if>
    <@aligning/>
    <#if has("fit-panel") && keptFlush()>
      <@say "Maßgebend ist die bündige Kante, nicht der Grund der Nut: Dort darf eine Haaresbreite Luft bleiben."/>
    </#if>
    <#if has("fit-pegged")>
      <#list clamps as c>
        <@say (c.count == 1)?then("Eine Zwinge", number(c.count) + " Zwingen") + " " + words["clamp." + c.axis] + " über die " + (c.count == 1)?then("Verbindung", "Verbindungen") + " setzen, Backen auf " + joined(c.jaws?map(j -> fulls(j.on))) + ": Öffnung " + opensTo(c) + ", mit Zulagen mehr."/>
      </#list>
      <@say fulls(moving) + " mit den Zwingen ganz heranziehen, bis an den Brüstungen keine Fuge zu sehen ist, und angesetzt lassen, bis die Holznägel sitzen."/>
    </#if>
    <#if hardware?size gt 0><@squareFirst/></#if>
    <@driving/>
    <#if has("fit-pegged") && wait != "">
      <@say "Leim an einem Holznagel " + wait + " abbinden lassen, oder so lange, wie sein Etikett sagt, bevor das Werkstück bewegt wird."/>
    </#if>
    <#if hardware?size == 0><@squaring/></#if>
    <@flushing/>
    <@standing/>
  </#if>
</#macro>

<#function ontoWords>
  <#if onto?size == 0><#return ""></#if>
  <#if onto?size gt 2><#return " an Ort und Stelle"></#if>
  <#return " an " + plains((gluedTo?size gt 0)?then(gluedTo, onto))>
</#function>

<#-- Das Zeitwort am Ende des Satzes. -->
<#function putting how>
  <#switch how>
    <#case "wiped"><#return "mit Tuch auftragen"><#break>
    <#case "brushed"><#return "mit Pinsel auftragen"><#break>
    <#case "sprayed"><#return "aufspritzen"><#break>
    <#default><#return "auftragen">
  </#switch>
</#function>

<#macro testing>
  <@title "Oberfläche an einem Reststück probieren"/>
  <@say "Ein Reststück von jedem Holz " + sheeted?then("und jeder Platte ", "") + "nehmen, die Oberfläche bekommt."/>
  <@say "Schleifen, wie das Möbel geschliffen wird" + ((finish.sandTo gt 0)?then(", bis Körnung " + finish.sandTo, "")) + "."/>
  <@say finish.product + " nach dem Etikett " + putting(finish.how) + ", jeden Auftrag, und jeden trocknen lassen" + (finish.last?size gt 0)?then("; dann " + joined(finish.last?map(l -> l.product)) + " darüber, wie am Möbel", "") + "."/>
  <@say "Ein Feld roh lassen und jeden Auftrag ein Feld weiter beginnen, sodass auf dem letzten alle liegen."/>
  <@say "Inzwischen mit den nächsten Schritten weitermachen."/>
  <@say "Das Möbel erst behandeln, wenn Farbe und Griff des Reststücks gefallen."/>
</#macro>

<#function masked at><#return joined(at?map(m -> (m.count gt 1)?then(m.count + " × ", "") + ((m.term == "")?then("Platz von ", cutName(m.term, 1) + " für ")) + m.mark + ", " + m.size))></#function>

<#-- Was behandelt wird, bevor es eingebaut wird. -->
<#macro preFinishing>
  <#assign panels = lettersOf(earlyPanels)>
  <#assign faces = (earlyOneFace + earlyBothFaces)>
  <@title ((faces?size == 0)?then("", "Innenseite von ")) + (parts?size <= 2)?then(plains(parts), joined(marks?map(p -> p.mark))) + " vor dem Einbau behandeln"/>
  <#if earlyPanels?size gt 0>
    <@say panels + " auf beiden Flächen und an den Kanten behandeln: Schwindet das Holz, kommen seine Kanten etwas aus den Nuten, und man würde einen rohen Streifen sehen."/>
  </#if>
  <#if earlyOneFace?size gt 0>
    <@say "An " + lettersOf(earlyOneFace) + " die Fläche behandeln, die nach innen zeigen wird: Später erreicht kein Pinsel sie ganz."/>
  </#if>
  <#if earlyBothFaces?size gt 0>
    <@say "An " + lettersOf(earlyBothFaces) + " beide Flächen behandeln: Später erreicht kein Pinsel sie ganz."/>
  </#if>
  <#list masks as m>
    <@say "Zuerst auf " + lettersOf(m.on) + " abkleben, was später geleimt wird, denn Leim braucht rohes Holz: " + masked(m.at) + "."/>
  </#list>
  <#if faces?size gt 0 && masks?size gt 0>
    <@say "Auch von den Enden fernhalten, die in andere Teile kommen."/>
  </#if>
  <@say finish.product + " dünn und gleichmäßig auf diese Flächen " + putting(finish.how) + " und nichts in eine Verbindung laufen lassen."/>
  <@coats/>
  <#if masks?size gt 0>
    <@say "Abdeckband abziehen, bevor der letzte Auftrag hart ist, und prüfen, dass das Holz darunter roh ist."/>
  <#else>
    <@say "Abzukleben ist nichts: An diese Flächen kommt kein Leim."/>
  </#if>
</#macro>

<#macro coats>
  <#if finish.oil>
    <@say "Nach der Zeit auf dem Etikett alles abwischen, was noch nass ist, sonst bleibt es klebrig."/>
  </#if>
  <@say ((finish.coats gt 1)?then("Nach jedem Auftrag ", "")) + finish.dry + " trocknen lassen, oder so lange, wie das Etikett sagt."/>
  <#if finish.coats gt 1>
    <@say "Jeden trockenen Auftrag vor dem nächsten leicht anschleifen und den Staub abwischen; im Ganzen braucht es " + number(finish.coats) + " Aufträge."/>
  </#if>
</#macro>

<#-- Was über die Aufträge kommt. -->
<#macro lastCoats>
  <#list finish.last as l>
    <#if l.wax>
      <@with "fine-pad"/>
      <@say "Ist der letzte Auftrag von " + finish.product + " hart, mit feinem Schleifvlies matt reiben und allen Staub abwischen."/>
      <@say l.product + " dünn " + putting((l.how == "")?then("wiped", l.how)) + ", " + (l.coats == 1)?then("einmal", l.coats + "-mal") + ", " + l.dry + " antrocknen lassen, oder so lange, wie das Etikett sagt, und mit sauberem Tuch polieren."/>
      <@say "Auf Wachs hält nichts, weder Leim noch ein weiterer Auftrag: Es soll das Allerletzte sein."/>
    <#else>
      <@say "Ist der letzte Auftrag von " + finish.product + " trocken, leicht anschleifen und " + l.product + " " + putting(l.how) + ", " + (l.coats == 1)?then("einen Auftrag", number(l.coats) + " Aufträge") + "; " + (l.coats == 1)?then("", "nach jedem ") + l.dry + " trocknen lassen, oder so lange, wie das Etikett sagt."/>
    </#if>
  </#list>
</#macro>

<#macro finishing>
  <#assign early = earlyPanels + earlyOneFace + earlyBothFaces>
  <@title "Oberfläche des Möbels behandeln"/>
  <#local grit = (finish.sandTo gt 0)?then(" bis Körnung " + finish.sandTo, "")>
  <#local goesOn = unsanded?size + sandedOnce?size gt 0>
  <#local outside = "die Außenseite" + opens?then(" und die Kanten und Rückseiten, die man innen beim Öffnen sieht und die noch ungeschliffen sind", "")>
  <@say "Mit Atemschutzmaske" + goesOn?then(grit + " schleifen: zuerst " + outside, " " + outside + opens?then(",", "") + grit + " schleifen") + "."/>
  <#if unsanded?size gt 0>
    <@say "Dann alle Flächen von dem schleifen, was noch lose und ungeschliffen ist: " + lettersOf(unsanded) + "."/>
  </#if>
  <#if sandedOnce?size gt 0>
    <@say "Dann von " + lettersOf(sandedOnce) + " alles schleifen, was zu sehen ist: Bisher ist daran nichts geschliffen."/>
  </#if>
  <@say "Allen Staub abbürsten."/>
  <#if early?size gt 0>
    <@say "Schleifmaschine und Pinsel von dem fernhalten, was schon behandelt ist: " + joined((earlyPanels?size gt 0)?then(["ganz " + lettersOf(earlyPanels)], []) + (earlyOneFace?size gt 0)?then(["Innenseite von " + lettersOf(earlyOneFace)], []) + (earlyBothFaces?size gt 0)?then(["beide Flächen von " + lettersOf(earlyBothFaces)], [])) + "."/>
  </#if>
  <#if toCover?size gt 0>
    <@with "masking-tape"/>
    <#if finishTold>
      <@say "Vor dem ersten Auftrag abdecken oder abkleben, was die Seite zur Oberfläche unter „Was frei bleiben muss“ nennt."/>
    <#else>
      <#list toCover as place>
        <@say "Vor dem ersten Auftrag abdecken an " + place.on + ": " + place.what + "."/>
      </#list>
    </#if>
  </#if>
  <#if sliding?size gt 0>
    <@with "masking-tape"/>
    <@say "Vor dem ersten Auftrag die Kanten von " + fulls(sliding) + " abkleben, die in Nuten laufen, und die Flächen darüber und darunter, so weit sie hineingehen: Jeder Auftrag dort nimmt vom Spiel zum Gleiten."/>
  </#if>
  <@say finish.product + " dünn und gleichmäßig auf " + (early?size gt 0)?then("alle anderen Flächen", "alle Teile") + " " + putting(finish.how) + ", innen und außen, auch auf lose Teile und Unterseiten."/>
  <#if sliding?size gt 0>
    <@say "Von den Nuten von " + fulls(slidIn) + " fernhalten und sofort auswischen, was in eine läuft."/>
  </#if>
  <@coats/>
  <@lastCoats/>
  <#if sliding?size gt 0>
    <@say "Abdeckband abziehen und diese Kanten und die Nuten roh lassen: Sie bekommen beim Einschieben etwas Wachs."/>
  </#if>
</#macro>

<#-- Was gebohrt wird, bevor Schrauben hineinkommen: nur, wo die Löcher nicht schon da sind. -->
<#function pilotsFirst>
  <#if drilledEarly?size gt 0 && !bitGiven><#return "Die Vorbohrungen sind schon da: "></#if>
  <#return (drilledEarly?size gt 0)?then("Die anderen Löcher vorbohren", "Vorbohren") + bitGiven?then(", mit den Bohrern und auf die Tiefen, die bei diesem Schritt angegeben sind,", "") + " und ">
</#function>
<#macro holesThere>
  <#if drilledEarly?size gt 0>
    <@say "Die Vorbohrungen in " + fulls(drilledEarly) + " wurden auf der Werkbank gebohrt: was angeschraubt wird, so setzen, dass seine Löcher darüber liegen."/>
  </#if>
</#macro>

<#-- Wo die Linien der Führungen laufen, für jeden Schubkasten: was gemessen wird, auf welchen Flächen, von wo. -->
<#function slideOwner line><#return (slideLines?size == 1)?then("", plains(line.drawer)?cap_first + ": ")></#function>
<#function lookingFaces line><#return fulls(line.walls) + ", zu " + (slideLines?size == 1)?then(plains(line.drawer), "ihm") + " hin,"></#function>
<#function slideHeight line><#return line.onWall + " über " + (line.floor?size gt 0)?then("der Oberseite von " + fulls(line.floor), pick(line.walls, "dem unteren Ende", "den unteren Enden"))></#function>
<#macro slideHeights lines>
  <#list lines as line>
    <@say slideOwner(line) + "auf " + lookingFaces(line) + " eine waagerechte Linie ziehen, " + slideHeight(line) + "; außen auf " + fulls(line.sides) + " eine Linie " + line.onSide + " über der Unterkante."/>
  </#list>
</#macro>
<#function slideEnd e>
  <#if e.sign == 0><#return "bündig mit der Vorderkante von " + fulls(e.fronts)></#if>
  <#local where = e.behind + (e.sign gt 0)?then(" hinter", " vor") + " der " + e.covered?then("Vorderfläche", "Vorderkante") + " von " + fulls(e.fronts)>
  <#return e.seam?then("bündig mit der Vorderkante von " + fulls(e.walls) + ", das heißt ", "") + where>
</#function>

<#-- Wie angerissen wird, woran Türen und Schubkästen hängen, zur Probe oder endgültig. -->
<#macro hanging item>
  <@holesThere/>
  <#switch item.kind>
    <#case "slide">
      <@say "Schienen jeder Führung trennen, wie das Blatt des Herstellers sagt."/>
      <#if slideLines?size gt 0>
        <@slideHeights slideLines/>
        <#list slideEnds as e>
          <@say (slideEnds?size gt 1)?then("Jede Korpusschiene von " + plains(e.drawers), "Jede Korpusschiene") + " mit der Mitte auf ihre Linie halten, das vordere Ende " + slideEnd(e) + ". Vorderes und hinteres Loch anzeichnen."/>
        </#list>
        <@say "Jede Schubkastenschiene mit der Mitte auf die Linie ihrer Seite halten, vordere Enden bündig. Dieselben Löcher anzeichnen."/>
        <@say "Hat eine Schiene auch Langlöcher, diese für die ersten Schrauben nehmen: Darin lässt sie sich noch verschieben."/>
      <#else>
        <@say "Korpusschienen waagerecht setzen, beide in einer Höhe, und ihre vorderen und hinteren Löcher anzeichnen."/>
        <@say "Schubkastenschienen in derselben Linie auf die Schubkastenseiten setzen und dieselben Löcher anzeichnen."/>
      </#if>
      <#break>
    <#case "under-slide">
      <#if slideLines?size gt 0>
        <#list slideLines as line>
          <@say slideOwner(line) + "auf " + lookingFaces(line) + " eine waagerechte Linie ziehen, " + slideHeight(line) + ", für die Unterkante der " + pick(line.walls, "Laufschiene", "Laufschienen") + "."/>
        </#list>
      <#else>
        <@say "Für die Unterkante der Laufschienen im Korpus eine waagerechte Linie ziehen."/>
      </#if>
      <@say "Laufschienen auf die Linien setzen, ihre vorderen Enden, wo der Hersteller es sagt, hinter der Vorderkante, und ihre Löcher anzeichnen."/>
      <@say "Rasten unter die vorderen Ecken der Schubkästen schrauben und die Löcher für die Haken in ihre Rückseiten bohren, wie das Blatt des Herstellers zeigt."/>
      <#break>
    <#case "concealed-hinge">
      <@say "In jedes Topfloch einen Topf drücken, seinen Arm rechtwinklig zur Kante der Tür."/>
      <@say "Tür offen neben ihren Platz halten und die Mitte jedes Arms am Korpus anzeichnen."/>
      <@say "Platten auf diese Striche setzen, so weit hinter die Vorderkante, wie der Hersteller des Topfbands es für eine aufliegende, halb aufliegende oder einliegende Tür sagt."/>
      <#break>
    <#case "butt-hinge">
      <@say "Jedes Scharnier etwa um seine eigene Länge vom Ende der Tür setzen und einen Lappen auf der Kante der Tür mit dem Messer umfahren."/>
      <@say "Aussparung bis zur Dicke des Lappens stechen, in dünnen Scheiben von der Mitte zu den Linien."/>
      <@say pilotsFirst() + "einen Lappen an die Tür schrauben."/>
      <@say "Tür auf Unterlagen in die Öffnung halten und den anderen Lappen am Korpus anzeichnen."/>
      <@say "Auch diese Aussparung stechen und ihre Löcher vorbohren; ihre Schrauben kommen hinein, wenn die Tür eingehängt wird."/>
      <#break>
  </#switch>
</#macro>

<#-- Schrauben, die einem Griff beiliegen, sind für eine Front gedacht. -->
<#macro screwLengths>
  <#list grips as g>
    <@say "Schrauben messen: " + (grips?size gt 1)?then("Wo sie", "Sie gehen") + " durch " + g.wood + " Holz und " + g.held + " tief in den " + words["kind." + item.kind] + (grips?size gt 1)?then(" gehen, sind sie", ", sind also") + " etwa " + g.all + " lang. Wo die beiliegenden kürzer sind, längere mit demselben Gewinde kaufen."/>
  </#list>
</#macro>

<#function inAll count><#return (count == 1)?then("", ": " + number(count) + " im Ganzen")></#function>
<#macro mounting>
  <#assign item = hardware[0]>
  <#assign noun = howMany(item.kind, item.count)>
  <#if has("mount-again")>
    <#assign slides = item.kind?ends_with("slide")>
    <@title slides?then("Schubkastenführungen", noun) + " wieder anbringen"/>
    <#if slides>
      <@say "Jede Schiene dort ansetzen, wo sie bei der Probe war, und die vordere und die hintere Schraube in die Löcher der Probe drehen, in denen sich nichts mehr verschiebt."/>
      <@say "Dazwischen jetzt vorbohren, mit den Bohrern und auf die Tiefen der Probe, und die übrigen der " + number(tried.screws) + " Schrauben eindrehen."/>
    <#elseif item.kind == "butt-hinge">
      <@say "Jedes Scharnier wieder in seine Aussparung in der Tür setzen und seine Schrauben eindrehen; die des anderen Lappens kommen hinein, wenn die Tür eingehängt wird."/>
    <#else>
      <@say "Jeden Topf wieder in sein Loch drücken und jede Platte wieder an ihre Striche schrauben."/>
    </#if>
    <@with "glue-brush"/>
    <@say "Prüfen, dass jede Schraube fasst; wo sich eine frei dreht, zuerst einen Span Holz in ihr Loch leimen."/>
    <#return>
  </#if>
  <#switch item.kind>
    <#case "slide">
    <#case "under-slide">
      <@title "Schubkastenführungen anbringen"/>
      <@hanging item/>
      <#break>
    <#case "concealed-hinge">
    <#case "butt-hinge">
      <@title noun + " anbringen"/>
      <@hanging item/>
      <#break>
    <#case "knob">
      <@title noun + " anbringen"/>
      <@screwLengths/>
      <@say howMany("wood-screw", item.count) + " von innen durchschieben und " + noun + " von Hand aufdrehen. Jede Schraube muss etwa " + grips[0].held + " tief in ihren Knopf reichen und nicht weiter, als dessen Loch tief ist: eine zu lange absägen oder mit einer Unterlegscheibe unterlegen."/>
      <#break>
    <#case "catch">
      <@title noun + " anbringen"/>
      <@say "Schnäpper an " + (caught.posts?size gt 0)?then(fulls(caught.posts), "das, was neben der Tür im Korpus steht") + " schrauben" + (caught.ends?size == 1)?then(", ihre Mitte " + caught.ends?first.distance + " ab der " + (caught.ends?first.face == "top")?then("oberen", "unteren") + " Kante der Tür", (caught.ends?size gt 1)?then(", so hoch wie bei diesem Schritt angegeben", "")) + (hardware?size == 1)?then(", mit den beiliegenden Schrauben: etwas dünner als ihr Kern vorbohren, mit Tiefenanschlag", "") + "."/>
      <#if caught.posts?size gt 0><@say "Der Magnet muss hinter der Tür liegen, in der Ebene ihrer Rückseite: Schnäpper über die Kante von " + fulls(caught.posts) + " vorstehen lassen, wenn seine Form es verlangt, auf einem Klotz aus einem Reststück."/></#if>
      <@with "chalk"/>
      <@say "Gegenstück an den Magneten setzen und seinen Rücken mit Kreide bestreichen. " + (item.count gt 1)?then("Jede Tür", "Tür") + " schließen, bis die Fuge gleichmäßig ist und die Fläche bündig liegt, auf das Gegenstück drücken und wieder öffnen."/>
      <@say "Gegenstück dort an " + fulls((caught.doors?size gt 0)?then(caught.doors, parts)) + " schrauben, wo es abgefärbt hat."/>
      <@say "Tür probieren: Gegenstück versetzen, bis sie ohne Kraft schließt."/>
      <#break>
    <#case "levelling-foot">
      <@title noun + " anbringen"/>
      <@say backed?then("Möbel auf einer Decke auf die Rückseite legen.", "Möbel auf einer Decke auf den Kopf stellen.")/>
      <@say "Für die Einsätze bohren (" + noun + "), wie ihr Hersteller sagt, mit Tiefenanschlag, und eindrücken oder einschrauben."/>
      <@say "Jeden Fuß um die Hälfte seines Wegs eindrehen."/>
      <@say "Möbel aufstellen. Wo es bleiben wird, die Füße drehen, bis eine Wasserwaage in beiden Richtungen einspielt."/>
      <#break>
    <#case "anti-tip-strap">
      <@title "Möbel an der Wand sichern"/>
      <#assign several = item.count gt 1>
      <#assign straps = several?then("jede Kippsicherung", "die Kippsicherung")>
      <@say "Vor dem ersten Loch nachlesen, was der Hersteller der Kippsicherung zu Schrauben, Höhe und Wand sagt: Das und die örtlichen Vorschriften gehen dem vor, was hier steht."/>
      <#if several>
        <@say "Die Wandständer oder festes Mauerwerk suchen, wo das Möbel stehen wird, und ihre Mitten an der Wand anzeichnen. Wo hinter " + fulls(parts) + " keiner steht, dort für die Kippsicherung ein Brett über zwei Ständer schrauben, nicht dicker, als hinter dem Möbel Platz ist."/>
      <#else>
        <@say "Einen Wandständer oder festes Mauerwerk suchen, wo das Möbel stehen wird, und die Mitte an der Wand anzeichnen. Möbel davorstellen, mit Platz zum Arbeiten dahinter, und diese Mitte auf seine Rückseite übertragen."/>
      </#if>
      <@hiddenMiddles "die Schrauben der Kippsicherung"/>
      <@say "Für die Kippsicherung vorbohren, etwas dünner als der Kern ihrer Schrauben, mit Tiefenanschlag."/>
      <@say several?then("Je eine Kippsicherung", "Kippsicherung") + " an " + fulls(parts) + " schrauben, nahe am oberen Ende des Möbels" + several?then("", " und am Ständer, wo immer hinter der Rückwand er steht") + (covered?size gt 0)?then(", durch " + fulls(covered) + "; darin allein hält keine Schraube", "") + "."/>
      <@say "Möbel an seinen Platz stellen und seine Oberkante an der Wand anzeichnen."/>
      <@say "Möbel nach vorn ziehen, bis dahinter Platz für einen Schraubendreher ist, nicht weiter, als " + straps + " reicht."/>
      <@say several?then("Ihr anderes Ende jeweils in das Brett oder", "Ihr anderes Ende in") + " die Mitte des Ständers schrauben, nicht höher als am Möbel und höchstens eine Handbreit tiefer, mit den Schrauben und der Vorbohrung, die der Hersteller der Kippsicherung für einen Ständer nennt, oder mit dem Mauerdübel, den er für Mauerwerk nennt: Gipskarton allein hält nichts."/>
      <@say "Möbel zurückschieben und versuchen, es zu kippen: Es darf sich höchstens um eine Fingerbreite bewegen. Sonst wieder nach vorn ziehen, " + straps + " um das kürzen, was locker war, und noch einmal versuchen."/>
      <#break>
    <#case "pull">
      <@title noun + " anbringen"/>
      <@screwLengths/>
      <@say "Schrauben von innen durchschieben, " + words["kind." + item.kind] + " an den Platz halten und mit dem Schraubendreher festziehen."/>
      <#break>
    <#case "shelf-pin">
      <@title "Bodenträger einsetzen"/>
      <@say "Für jeden Boden eine Höhe wählen und seine Bodenträger bis zum Bund eindrücken: " + number(item.count) + " im Ganzen."/>
      <@say "Löcher von unten zählen, damit jeder Boden waagerecht liegt."/>
      <#break>
    <#case "foot">
      <@title noun + " anbringen"/>
      <@say backed?then("Möbel auf einer Decke auf die Rückseite legen.", "Möbel auf einer Decke auf den Kopf stellen.")/>
      <#if item.title?matches(".*(\\bnail|nagel).*", "i")>
        <@with "drill"/>
        <@with "pilot-bit"/>
        <@say "Zuerst für jeden ein Loch bohren, etwas dünner und kürzer als sein Nagel: Ein Nagel, der in ein schmales Teil getrieben wird, kann es spalten."/>
      </#if>
      <#if item.count == total(parts)>
        <@say (item.count gt 1)?then("Je einen Gleiter in die Mitte jeder", "Gleiter in die Mitte der") + " Unterseite von " + fulls(parts) + " setzen und gerade einschlagen" + inAll(item.count) + "."/>
      <#else>
        <@say "Je einen Gleiter in die Mitte jedes Platzes setzen und gerade einschlagen" + inAll(item.count) + "."/>
      </#if>
      <@say "Möbel wieder aufstellen."/>
      <#break>
    <#default>
      <@title many(item.title, item.count) + " anbringen"/>
      <#list linings as l>
        <@say "Auf " + l.length + " Länge und " + l.width + " Breite zuschneiden: so groß wie " + fulls(l.on) + " zwischen den Wänden, weniger " + l.free + " an jeder, damit es flach liegt."/>
      </#list>
      <#if shares?size gt 1>
        <@say "Wie angemerkt anbringen: " + joined(shares?map(s -> s.count + " an " + fulls(s.parts))) + "."/>
      <#else>
      <@say number(item.count) + " Stück" + ((said?size gt 0 && parts?size gt 1)?then(", wie angemerkt, zwischen ", " an ")) + fulls(parts) + " anbringen" + (said?size == 0)?then(", nach dem beiliegenden Blatt, wo es eines gibt", "") + "."/>
      </#if>
      <#if item.sticks>
        <#if item.overWax>
          <@with "mineral-spirits"/>
          <@with "lint-free-cloth"/>
        </#if>
        <@say "Warten, bis die Oberfläche so hart ist, dass ein Fingernagel keine Spur hinterlässt, denn Kleber, der an einem weichen Auftrag haftet, hebt ihn ab." + item.overWax?then(" Auf Wachs haftet nichts: es zuerst an jedem Platz mit einem Tuch und etwas Testbenzin abwischen und trocknen lassen.", " Zuerst jeden Platz frei von Staub und Fett wischen.")/>
      </#if>
  </#switch>
  <#if hardware?size gt 1 && item.kind != "butt-hinge">
    <@say pilotsFirst() + howMany("wood-screw", hardware[1].count) + " eindrehen."/>
  </#if>
</#macro>

<#function takenHow p>
  <#if p.hand == ""><#return ""></#if>
  <#return (p.hand == "drawn")?then(" wie gezeichnet", " gespiegelt")>
</#function>
<#-- Die eigenen Worte des Verfassers zuerst: Sie betreffen, was folgt; was sie von der Zeit nach dem Leim sagen, kommt zuletzt. -->
<#-- Was an einer Leimfuge hängt, bis etwas anderes daran ist. -->
<#list careful as c>
! Bis Schritt ${c.step} vorsichtig behandeln: ${fulls(c.held)} ${pick(c.held, "hält", "halten je")} nur an einer Leimfuge, bis ${fulls(c.stiffener)} angebracht ${pick(c.stiffener, "ist", "sind")}. Das Möbel nicht wenden, sich nicht darauf stützen und nicht daran heben.
</#list>
<#if heavyUp>
! ${words["caution.turning"]}
</#if>
<#assign afterwards = said?filter(each -> each?matches(".*(\\b(when|once|after) the glue (is|has) (hard|dry|cured|set|hardened)|(\\b(wenn|sobald|nachdem) der|ist der) leim (hart|trocken|ausgehärtet|abgebunden)).*", "i"))>
<#if said?filter(each -> each?matches(".*\\b([Ss]crape|abziehen|[Aa]bkratzen)\\b.*"))?size gt 0><@with "scraper"/></#if>
<#list said?filter(each -> !afterwards?seq_contains(each)) as each>
<@say words["step.note"] + " " + each/>
<#if verb == "fit" && each?matches(".*\\b([Gg]lue (only|the|it|them|one)|[Ll]eimen)\\b.*")><@with "glue-brush"/></#if>
</#list>
<#assign forOne = (each![])?size gt 0>
<#if forOne && !alike>
<@say "Das alles für jede der " + number(each?size) + " Baugruppen machen, eine nach der anderen: " + each?map(unit -> plains(unit.name) + ", aus " + lettersOf(unit.marks))?join("; ") + ". Sie sind bis auf die Höhe ihrer Teile gleich."/>
<#elseif forOne>
<@say "Das alles für jede Baugruppe machen, eine nach der anderen: " + plains(whole) + "."/>
<#elseif total(inUnits) gt 1 && !has("fit-front")>
<@say "Das für " + plains(inUnits) + " machen, die gleich sind" + alike?then("", " bis auf die Höhe ihrer Teile: die von einer Baugruppe zusammenhalten, nach ihren Zeichen") + "."/>
</#if>
<#if oneShown && (forOne || total(inUnits) gt 1) && !has("fit-front")>
<@say "Das Bild zeigt die erste Baugruppe."/>
</#if>
<#if verb == "fit" && (eachMinutes!"") != "">
<@say "Jede Baugruppe dauert etwa " + eachMinutes + ": Leim nur auf eine geben und sie spannen, bevor die nächste begonnen wird."/>
</#if>
<#if verb == "fit" && (turns!1) gt 1>
<@say "Je " + number(atOnce) + " auf einmal verleimen, denn die Werkstatt hat " + number(shopClamps) + " Zwingen: die nächsten beginnen, wenn die Zwingen der ersten abkommen."/>
</#if>
<#if (mirrorImages![])?size gt 0>
<@say plains(mirrorImages) + " als Spiegelbilder voneinander bauen: jedes Teil auf die Seite legen, wo das Bild es zeigt."/>
<#if mirrorTaken?size gt 0>
<@say mirrorTaken?map(u -> plains(u.name) + ": " + joined(u.parts?map(p -> full(p) + takenHow(p))))?join("; ") + "."/>
</#if>
</#if>
<#if clampsOff?size gt 0>
<@say "Zwingen von " + (clampsOff?size == 1)?then("Schritt ", "den Schritten ") + joined(clampsOff?map(n -> n?string)) + " abnehmen" + standsUp?then(" und das Möbel wieder aufstellen", "") + "."/>
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
