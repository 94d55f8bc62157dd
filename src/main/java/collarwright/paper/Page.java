package collarwright.paper;

import java.util.List;

/**
 * A page before its foot is known.
 *
 * @param section what it is about, for its head and for the list of contents
 * @param items what stands on it
 */
record Page(String section, List<PageItem> items) {
    Page {
        items = List.copyOf(items);
    }
}
