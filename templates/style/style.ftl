<#-- The style sheet: one family in three weights, one near-black, hairlines.
     Gets: paper (widthMm, heightMm, sideMm, topMm, bottomMm). -->
@page {
  size: ${paper.widthMm}mm ${paper.heightMm}mm;
  margin: ${paper.topMm}mm ${paper.sideMm}mm ${paper.bottomMm}mm ${paper.sideMm}mm;
  @top-left { content: element(head); width: 100%; vertical-align: bottom; padding-bottom: 6mm; }
  @bottom-left { content: element(foot); width: 100%; vertical-align: top; padding-top: 5.5mm; }
}
@page cover {
  margin: 18mm ${paper.sideMm}mm;
  @top-left { content: normal; }
  @bottom-left { content: normal; }
}
@page turned { size: ${paper.heightMm}mm ${paper.widthMm}mm; }
/* The width that a turned page has for text: a page's own is that of the first. */
.turned { page: turned; width: ${paper.heightMm - 2 * paper.sideMm}mm; }
* { margin: 0; padding: 0; }
body { font-family: Roboto; font-size: 9.5pt; line-height: 1.42; color: #1a1d1f; }
.head { position: running(head); }
.foot { position: running(foot); }
.head-line, .foot-line { width: 100%; border-collapse: separate; border-spacing: 0; font-size: 8.5pt; color: #54595d; }
.head-line td, .foot-line td { padding: 0; }
.head-line td { padding-bottom: 1.6mm; border-bottom: 0.25mm solid #1a1d1f; }
.page-number:before { content: counter(page); }
.page-count:before { content: counter(pages); }
.right { text-align: right; }
/* The space above keeps a tall line's box from reaching back onto the page before. */
.section { page-break-before: always; padding-top: 1mm; }
.cover { page: cover; }
h1 { font-weight: 300; font-size: 25pt; line-height: 1.15; margin-bottom: 4mm; page-break-after: avoid; }
h2 { font-weight: 700; font-size: 11pt; line-height: 1.3; margin-top: 6mm; margin-bottom: 1.5mm; page-break-after: avoid; }
h3 { font-weight: 700; font-size: 8.5pt; line-height: 1.3; margin-top: 3mm; margin-bottom: 0.8mm; }
p { margin-bottom: 1.5mm; }
.lead { font-size: 11pt; color: #3c4145; margin-bottom: 3mm; }
.quiet { color: #54595d; }
.small { font-size: 8.5pt; }
.follows { margin-top: 9mm; }
.top { margin-top: 0; }
.drawing { display: inline-block; vertical-align: bottom; }
.picture { text-align: center; line-height: 1; font-size: 1pt; }
a { color: #1a1d1f; text-decoration: none; }
b { font-weight: 700; }

/* Fractions: the figures stay text, so that they copy and search as 27 23/32. */
.kept { white-space: nowrap; }
h1, .cover-name, .step-title, td.name { word-wrap: break-word; }
table.cut-list td.name { max-width: 38mm; }
table.cut-list td p { margin-bottom: 0; }
table.cut-list td.blank-of { text-align: center; }
/* A block of its own: a run that may not break is else put beyond the end of a line. */
.kept-together { display: inline-block; white-space: nowrap; }
.fraction { display: inline-block; white-space: nowrap; }
.thin { font-size: 70%; }
.over { font-size: 70%; vertical-align: 0.32em; line-height: 1; }
.under { font-size: 70%; vertical-align: -0.06em; line-height: 1; }
.slash { font-weight: 300; }
.fallback { font-family: "DejaVu Sans"; font-weight: 400; font-size: 94%; }

/* Tables: hairlines between rows only, figures right. TableHeights counts with their heights. */
table.list { width: 100%; border-collapse: separate; border-spacing: 0; font-size: 8.5pt; line-height: 1.3; }
table.list th { text-align: left; font-weight: 700; padding: 1mm 1.6mm 1mm 0; border-bottom: 0.25mm solid #1a1d1f; vertical-align: bottom; }
table.list td { padding: 1mm 1.6mm 1mm 0; border-bottom: 0.12mm solid #9a9ea1; vertical-align: top; }
table.list tr { page-break-inside: avoid; }
table.list th.figure, table.list td.figure { text-align: right; white-space: nowrap; }
table.list th.group { text-align: center; border-bottom: 0.12mm solid #9a9ea1; }
table.list th.none { border-bottom: none; }
table.list .gap { padding-left: 4mm; }
table.list .last { padding-right: 0; }
td.mark { font-weight: 700; white-space: nowrap; }
tr.total td { font-weight: 700; border-bottom: none; }

/* Their columns are as wide as ToolPages counts with. */
table.tools, table.finish-rows { table-layout: fixed; }

/* A table longer than a page repeats its head; the cut list is split before. */
table.long { -fs-table-paginate: paginate; }

/* Cover. */
.cover-drawing { text-align: center; line-height: 1; font-size: 1pt; }
.cover-name { font-weight: 300; font-size: 44pt; line-height: 1.08; margin-bottom: 3mm; }
.cover-long { font-size: 25pt; }
.cover-longest { font-size: 14pt; }
.cover-summary { font-size: 11pt; margin-bottom: 7mm; }
table.figures { width: 100%; border-collapse: separate; border-spacing: 0; border-top: 0.25mm solid #1a1d1f; }
table.figures td { padding-top: 2.4mm; padding-right: 4mm; vertical-align: top; }
.figure-label { font-size: 8.5pt; color: #54595d; }
.figure-value { font-size: 14pt; font-weight: 300; }
table.facts { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; margin-top: 4mm; font-size: 8.5pt; line-height: 1.34; }
table.facts td { vertical-align: top; padding-bottom: 0.4mm; }
table.facts td.fact { width: 34mm; color: #54595d; }
.cover-imprint { font-size: 8.5pt; color: #54595d; margin-top: 7mm; }

/* The band on each page of a preview. */
.preview-band { border-top: 0.25mm solid #54595d; border-bottom: 0.25mm solid #54595d; color: #54595d; font-weight: 300; font-size: 14pt; line-height: 1.2; text-align: center; padding: 1mm 0 1.4mm 0; margin-bottom: 4mm; }

/* Before you start. */
table.two { width: 100%; border-collapse: separate; border-spacing: 0; }
table.two td.column { width: 47%; vertical-align: top; }
table.two td.gutter { width: 6%; }
ul.plain { list-style-type: none; }
ul.plain li { margin-bottom: 1mm; }
table.two { table-layout: fixed; }
table.cautions { font-size: 8.5pt; line-height: 1.34; }
table.next-spread { page-break-before: always; }
table.contents { width: 100%; table-layout: fixed; font-size: 7.5pt; line-height: 1.25; border-collapse: separate; border-spacing: 0; }
table.contents td { padding: 0.2mm 0; vertical-align: bottom; }
table.contents tr.main td { font-size: 8.5pt; padding-top: 1.1mm; border-bottom: 0.12mm solid #9a9ea1; }
table.contents td.n { vertical-align: top; }
table.contents td.page { text-align: right; }
col.number { width: 7mm; }
col.page { width: 10mm; }
.check { page-break-inside: avoid; }
table.beside { width: 100%; margin-top: 3mm; border-collapse: separate; border-spacing: 0; table-layout: fixed; }
table.beside td { vertical-align: top; font-size: 8.5pt; line-height: 1.34; }
table.beside td.bars { width: 122mm; }
.check-title { font-size: 11pt; font-weight: 700; line-height: 1.3; }
.target:before { content: target-counter(attr(href), page); }

/* Cautions stand before the action and inside a frame. */
.caution { border: 0.35mm solid #1a1d1f; padding: 2mm 3mm; margin-bottom: 2.5mm; }
.caution b { letter-spacing: 0.02em; }

/* The finish; its height is that which FinishHeight counts with. */
.finish h2 { margin-top: 3.5mm; }
.finish h2.top { margin-top: 0; }
#finish.follows { margin-top: 6mm; }
table.coats td { height: 7mm; border-bottom: 0.12mm solid #9a9ea1; }
.sign { margin-top: 6mm; margin-bottom: 3mm; border-top: 0.25mm solid #1a1d1f; width: 100mm; font-size: 8.5pt; color: #54595d; }

/* Layouts. */
table.columns { width: 100%; border-collapse: separate; border-spacing: 0; }
table.columns td.column { vertical-align: top; padding-right: 6mm; width: 33.3%; }
table.columns td.half { vertical-align: top; padding-right: 8mm; width: 50%; }
table.columns td.end { padding-right: 0; }
table.parts-list { font-size: 8.5pt; margin-top: 3mm; }
table.run-on { page-break-inside: avoid; margin-top: 0; }
.layout { padding-bottom: 4mm; }
.bar { padding-bottom: 0.5mm; }

/* Joints; their heights are those that JoineryPages counts with. */
.joint-lead { font-size: 8.5pt; line-height: 1.3; color: #54595d; height: 8mm; margin-bottom: 2.5mm; }
table.joints { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; }
table.joints tr { page-break-inside: avoid; }
td.joint { vertical-align: top; padding: 0 6mm 4.5mm 0; }
td.joint.end { padding-right: 0; }
.joint-title { font-weight: 700; font-size: 10pt; line-height: 1.25; }
.joint-text { font-size: 8.5pt; line-height: 1.3; margin-bottom: 0; }
.joint-steps { color: #54595d; }

/* Part drawings; their heights are those that PartPages counts with. */
.part { padding-bottom: 6mm; }
.part-title { font-weight: 300; font-size: 17pt; line-height: 1.2; }
.part-mark { padding-right: 3mm; }
.part-lead { font-size: 9.5pt; color: #3c4145; margin-bottom: 1.5mm; }
table.block { width: 100%; table-layout: fixed; border: 0.25mm solid #1a1d1f; border-collapse: separate; border-spacing: 0; margin-top: 2.5mm; }
table.block td { padding: 0.8mm 1mm 0.6mm 1.6mm; vertical-align: top; border-left: 0.25mm solid #1a1d1f; font-size: 8.5pt; line-height: 1.25; }
td.block-scale { white-space: nowrap; }
table.block td.first { border-left: none; }
td.block-part { width: 33mm; }
td.block-general { width: 50mm; }
td.block-stock { width: 31mm; }
td.block-grain { width: 20mm; }
td.block-date { width: 18mm; }
td.block-sheet { width: 17mm; white-space: nowrap; }
.field { font-size: 7.5pt; line-height: 1.25; color: #54595d; display: block; }

/* Steps; their heights are those that StepHeights and StepSideHeights count with. */
.stage-name { font-size: 11pt; line-height: 1.42; font-weight: 700; padding-top: 1mm; padding-bottom: 2.5mm; }
.step { padding-bottom: 6mm; }
.small-step { padding-bottom: 4mm; }
.last-step { padding-bottom: 0; }
table.step-head { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; }
table.step-head td { vertical-align: baseline; padding-top: 1mm; padding-bottom: 1.2mm; font-weight: 300; }
td.step-number { width: 22mm; font-size: 44pt; line-height: 1; }
td.step-title { font-size: 25pt; line-height: 1.15; }
td.long-title { font-size: 17pt; line-height: 1.2; }
.small-step td.step-number { width: 15mm; font-size: 27pt; }
.small-step td.step-title { font-size: 17pt; line-height: 1.2; }
.step-again { font-size: 8.5pt; line-height: 1.42; color: #54595d; padding-bottom: 2.5mm; }
.step .picture { margin-top: 2mm; margin-bottom: 3mm; }
.step .strip { margin-top: 1mm; margin-bottom: 1.5mm; line-height: 1; font-size: 1pt; }
table.step-body { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; margin-top: 1mm; }
table.step-top, table.step-columns { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; }
.step table.step-top .picture { margin-top: 0; margin-bottom: 0; }
.step table.step-top td.side .picture { margin-top: 2mm; }
table.step-top td { padding-top: 2mm; padding-bottom: 3mm; }
table.step-top td.shown { padding-right: 8mm; vertical-align: top; }
table.step-columns { margin-top: 1mm; }
table.step-columns td.half { vertical-align: top; padding-right: 4mm; width: 50%; }
table.step-columns td.end { padding-left: 4mm; padding-right: 0; }
/* The line to tick and sign is as high as StepHeights says. */
table.sign-line { page-break-inside: avoid; width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; margin-top: 3mm; font-size: 8.5pt; line-height: 1.3; color: #54595d; }
table.sign-line td { height: 6mm; vertical-align: bottom; border-bottom: 0.25mm solid #1a1d1f; }
table.sign-line td.tick { width: 24mm; border-bottom: none; }
table.sign-line td.initials { width: 38mm; padding-left: 3mm; }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; border: 0.25mm solid #1a1d1f; }
td.do { vertical-align: top; padding-right: 8mm; }
td.side { width: 54mm; vertical-align: top; font-size: 8.5pt; }
.step .caution { margin-bottom: 2mm; padding: 1.6mm 3mm 0.8mm 3mm; }
.step .caution p { margin-bottom: 0.8mm; }
table.sentences { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; }
table.sentences td { vertical-align: top; padding-bottom: 1.5mm; }
table.sentences td.n { width: 7mm; }
/* At the end of a page what keeps things apart would only push over it. */
.last-step table.sentences tr:last-child td { padding-bottom: 0; }
td.side h3 { margin-top: 0; }
.side-block { padding-bottom: 1.8mm; }
.last-step .side-block:last-child { padding-bottom: 0; }
.side-line { margin-bottom: 1.6mm; }
.small-step table.side-list td { padding-top: 0.4mm; padding-bottom: 0.4mm; }
.small-step table.sentences td { padding-bottom: 0.7mm; }
.side-block p { margin-bottom: 0.4mm; }
table.side-list { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; }
table.side-list td { padding: 0.7mm 1.5mm 0.7mm 0; border-bottom: 0.12mm solid #9a9ea1; vertical-align: top; }
table.side-list td.figure { text-align: right; padding-right: 0; white-space: nowrap; }
table.side-list td.mark { width: 8mm; }
.parts-list table.side-list td.figure { width: 12mm; }
table.side-list td.count { width: 12mm; }
table.side-list td.value { width: 19mm; }
.step table.side-list td.measured { height: 6mm; padding-top: 0; padding-bottom: 0; vertical-align: bottom; color: #54595d; font-size: 7.5pt; }
table.sizes-below { font-size: 8.5pt; }
table.side-list td.gap { width: 8mm; border-bottom: none; }
table.side-list td.sized { width: 12mm; white-space: nowrap; }

/* Labels; their heights are those that LabelPages counts with. */
.label-lead { font-size: 8.5pt; line-height: 1.3; color: #54595d; height: 8mm; margin-bottom: 0; }
table.labels { table-layout: fixed; border-collapse: separate; border-spacing: 0; border-top: 0.12mm dashed #1a1d1f; border-left: 0.12mm dashed #1a1d1f; }
table.labels tr { page-break-inside: avoid; }
td.label { padding: 0; vertical-align: top; border-right: 0.12mm dashed #1a1d1f; border-bottom: 0.12mm dashed #1a1d1f; }
table.label-inside { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; font-size: 7.5pt; line-height: 1.25; }
table.label-inside td { padding: 1.4mm 1.4mm 0 2mm; vertical-align: top; }
table.label-inside td.label-mark { width: 15mm; padding-right: 0; }
.label-letter { font-size: 25pt; line-height: 1.05; font-weight: 700; }
.label-step { font-weight: 700; }
.label-name { font-weight: 700; word-wrap: break-word; }
.label-arrow { font-size: 11pt; line-height: 1; }

/* The record; its heights are those that RecordPages counts with. */
table.fill td { height: 5.5mm; }
table.fill td p { margin-bottom: 0; }
td.day { width: 20mm; white-space: nowrap; }
td.sum { width: 20mm; }
td.stock { width: 34mm; }
td.part { width: 40mm; word-wrap: break-word; }
td.where { width: 32mm; }
table.photos { width: 100%; table-layout: fixed; border-collapse: separate; border-spacing: 0; page-break-inside: avoid; }
table.photos td { vertical-align: top; padding-bottom: 5mm; }
table.photos td.half { width: 50%; }
.photo { display: inline-block; vertical-align: bottom; }
.caption { font-size: 8.5pt; line-height: 1.3; margin-top: 1.5mm; margin-right: 5mm; margin-bottom: 0; }
