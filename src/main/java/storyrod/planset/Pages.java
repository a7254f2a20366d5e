package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.ItemEntry;
import storyrod.drawing.Exploded;
import storyrod.piece.HardwareUse;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** All that the templates get, section by section. */
record Pages(
    Texts texts,
    Paper paper,
    Edition edition,
    Chosen chosen,
    Cover cover,
    CutList cutList,
    CutList partsList,
    LabelPages labels,
    GlueUpList glueUps,
    Shopping shopping,
    Layouts layouts,
    HardwareList hardware,
    ListPages breaks,
    ToolPages tools,
    GeneralPages general,
    List<DrawingBox> exploded,
    List<HardwareList.Row> explodedKey,
    OpenedPages opened,
    PartPages parts,
    JoineryPages joinery,
    StepPages steps,
    TimelinePages timeline,
    Optional<FinishData> finish,
    Notes notes,
    BeforePages before,
    EndPages end,
    WoodPages wood,
    Glossary glossary,
    FullSizePages templates,
    Preview preview,
    Licence licence,
    RecordPages record) {
  static final String EXPLODED = "exploded";

  /** What the title and the parts list take of the exploded view's page. */
  private static final double EXPLODED_FRAME_MM = 31;

  private static final TextMeasure LIST = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);

  /** What a row of the parts list takes below its text, and a column beside the names. */
  private static final double PARTS_LIST_BELOW_MM = 1.6;

  private static final double PARTS_LIST_BESIDE_MM = 30;
  private static final double KEY_ABOVE_MM = 5;
  private static final int HARDWARE_LIST_COLUMNS = 2;
  static final int PARTS_LIST_COLUMNS = 3;

  static Pages of(PlanSet set, Print print, Wording wording) {
    Texts texts = print.texts();
    Paper paper = print.paper();
    CutList cutList = CutList.of(set, texts).only(print.chosen());
    GlueUpList glueUps = GlueUpList.of(set, texts).only(print.chosen());
    Shopping shopping = Shopping.of(set, texts).with(UsedUp.of(set, wording, texts));
    HardwareList hardware = HardwareList.of(set, print);
    StepPages steps = StepPages.of(set, new StepPages.Sheet(print, wording));
    Notes notes = Notes.of(set, steps, texts);
    JoineryPages joinery = JoineryPages.shown(set, print);
    LastTables last = LastTables.of(set, new Glossary.Source(steps, joinery), print, 0);
    ListPages lists =
        ListPages.of(
            new ListPages.Lengths(
                    paper,
                    cutList,
                    glueUps,
                    shopping,
                    hardware,
                    texts.say("cutlist.lead", print.units()),
                    shopping.below(print.edition().is("prices")).stream()
                        .map(texts::say)
                        .collect(Collectors.joining(" ")))
                .in(print.edition()));
    Pages pages =
        new Pages(
            texts,
            paper,
            print.edition(),
            print.chosen(),
            Cover.of(set, print),
            cutList,
            CutList.of(set, texts),
            LabelPages.of(Labels.of(set, texts).only(print.chosen()), paper),
            glueUps,
            shopping,
            Layouts.of(set, texts, paper),
            hardware,
            lists,
            tools(set, steps, print, lists),
            GeneralPages.of(set, texts, paper),
            exploded(set, paper),
            HardwareKey.of(
                set.drawings().exploded().hardware().isPresent()
                    ? Stream.of()
                    : Stream.of(set.drawings().exploded().whole()),
                HardwareList.whole(set, texts)),
            OpenedPages.of(set, texts),
            PartPages.of(set, print),
            joinery,
            steps,
            TimelinePages.of(set, steps, print),
            FinishData.of(set, notes, print),
            notes,
            BeforePages.NONE,
            EndPages.NONE,
            last.wood(),
            last.glossary(),
            FullSizePages.of(set, print),
            Preview.of(set, steps, shopping, print),
            Licence.of(set, print, true),
            RecordPages.of(set, print));
    return pages.placed(set, print);
  }

  /** The same pages with what depends on the lines of their contents. */
  private Pages placed(PlanSet set, Print print) {
    List<Outline.Entry> lines = Outline.of(this).lines();
    BeforePages placed = BeforePages.of(notes, lines, print);
    EndPages ends = EndPages.of(ends(print), placed, print);
    LastTables last = LastTables.of(set, new Glossary.Source(steps, joinery), print, ends.endMm());
    return new Pages(
        texts,
        paper,
        edition,
        chosen,
        cover,
        cutList,
        partsList,
        labels,
        glueUps,
        shopping,
        layouts,
        hardware,
        breaks,
        tools,
        general,
        exploded,
        explodedKey,
        opened,
        parts,
        joinery,
        steps,
        timeline,
        finish,
        notes,
        placed,
        ends,
        last.wood(),
        last.glossary(),
        templates,
        preview,
        Licence.of(set, print, last.licenceBreaks()),
        record.withRevisions(last.revisionsBreak()));
  }

  /** The tools go on below the lists where an edition has them there. */
  private static ToolPages tools(PlanSet set, StepPages steps, Print print, ListPages lists) {
    boolean follow = print.edition().follows("lists/hardware", "tools");
    double atMm = follow ? lists.endMm() : print.paper().roomMm();
    return print.edition().has("tools") ? ToolPages.of(set, steps, print, atMm) : ToolPages.NONE;
  }

  private EndPages.Ends ends(Print print) {
    FinishHeight height = new FinishHeight(print.texts(), print.paper());
    return new EndPages.Ends(
        steps,
        notes,
        finish.map(height::ofMm).orElse(0.0),
        finish.map(height::scheduleMm).orElse(0.0));
  }

  /** The exploded view and, where there is one, that of the hardware. */
  private static List<DrawingBox> exploded(PlanSet set, Paper paper) {
    Exploded exploded = set.drawings().exploded();
    return Stream.concat(Stream.of(exploded.whole()), exploded.hardware().stream())
        .map(each -> DrawingBox.within(each.name(), each, each.widthMm(), each.heightMm()))
        .toList();
  }

  /** The height in mm that the exploded view's title and parts list leave for it. */
  static double explodedRoom(Piece piece, Paper paper) {
    return explodedRoom(piece.marks().stream().map(Mark::title).toList(), PARTS_LIST_COLUMNS, paper)
        - keyMm(HardwareKey.below(piece), paper);
  }

  /** The height in mm that the title and the list of hardware leave. */
  static double hardwareRoom(Piece piece, Paper paper) {
    List<String> titles =
        HardwareUse.of(piece).counts().keySet().stream()
            .flatMap(item -> piece.item(item).stream())
            .map(ItemEntry::title)
            .toList();
    return explodedRoom(titles, HARDWARE_LIST_COLUMNS, paper);
  }

  /** What the names of some hardware take below exploded views. */
  static double keyMm(List<String> titles, Paper paper) {
    return titles.isEmpty() ? 0 : listMm(titles, HARDWARE_LIST_COLUMNS, paper) + KEY_ABOVE_MM;
  }

  private static double explodedRoom(List<String> titles, int columns, Paper paper) {
    double room = paper.textHeightMm() - EXPLODED_FRAME_MM - listMm(titles, columns, paper);
    return Math.max(room, 100);
  }

  /** The height of the longest of a list's columns, long names broken into lines. */
  static double listMm(List<String> titles, int columns, Paper paper) {
    int rows = Math.max(1, Math.ceilDiv(titles.size(), columns));
    double width = paper.textWidthMm() / columns - PARTS_LIST_BESIDE_MM;
    double highest = 0;
    for (int from = 0; from < titles.size(); from += rows) {
      highest =
          Math.max(
              highest,
              titles.subList(from, Math.min(from + rows, titles.size())).stream()
                  .mapToDouble(title -> LIST.heightMm(title, width) + PARTS_LIST_BELOW_MM)
                  .sum());
    }
    return highest;
  }

  Print print() {
    return new Print(texts, paper, edition, chosen);
  }

  Map<String, Object> data() {
    Map<String, Object> data = new LinkedHashMap<>();
    Outline outline = Outline.of(this);
    data.put("sections", sections());
    data.put("outline", outline.entries());
    data.put("say", new Said(texts));
    data.put("language", texts.words().language());
    data.put("unit", texts.unit());
    data.put("unitWord", texts.format().unit().word());
    data.put("units", print().units());
    data.put("reading", print().reading());
    data.put("paper", paper);
    data.put("edition", switches());
    data.put("cover", cover);
    data.put("cutList", cutList);
    data.put("partsList", partsList);
    data.put("shownMarks", chosen.marks());
    data.put(LabelPages.KEY, labels);
    data.put("glueUps", glueUps);
    data.put("shopping", shopping);
    data.put("layouts", layouts);
    data.put("hardware", hardware);
    data.put("breaks", breaks);
    data.put("tools", tools);
    data.put("general", general);
    data.put("exploded", exploded.getFirst());
    data.put("explodedHardware", exploded.subList(1, exploded.size()));
    data.put("explodedKey", explodedKey);
    data.put("openedLead", opened.lead());
    data.put("opened", opened.pages());
    data.put("openedKeys", opened.keys());
    data.put("parts", parts);
    data.put(JoineryPages.KEY, joinery);
    data.put("steps", steps);
    data.put("heads", RunningHeads.of(this));
    data.put("timeline", timeline);
    data.put("finish", finish.stream().toList());
    data.put("notes", notes);
    data.put("before", before);
    data.put("end", end);
    data.put("wood", wood);
    data.put("glossary", glossary);
    data.put("templates", templates);
    data.put("preview", preview);
    data.put(Licence.KEY, licence);
    data.put("recorded", record.recorded());
    data.put("recordBreaks", record.breaks());
    data.put("madePages", record.made());
    data.put("photos", record.photos());
    data.put("checkBar", CheckBar.box());
    return data;
  }

  /** The templates of the sections that have something to show. */
  private List<String> sections() {
    return edition.sections().stream()
        .filter(section -> !Sections.outline(section, this).isEmpty())
        .map(section -> "/" + Sections.file(section))
        .toList();
  }

  private Map<String, Object> switches() {
    Map<String, Object> values = new LinkedHashMap<>();
    Edition.SWITCHES.forEach(key -> values.put(key, edition.is(key)));
    edition.switches().keySet().forEach(key -> values.put(key, edition.is(key)));
    values.put("name", edition.name());
    return values;
  }

  String say(String key, Object... values) {
    return texts.say(key, values);
  }
}
