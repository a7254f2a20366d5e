package storyrod.cli.lists;

import java.util.List;
import storyrod.description.SourceText;

/** A list as rows of cells, each row with as many as the head; rows of empty cells are left out. */
record Table(SourceText source, List<Cell> head, List<List<Cell>> rows) {
  Table {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
  }
}
