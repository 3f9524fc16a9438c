// Bytes of a PDF: pages, links, destinations, bookmarks and what a reader's program shows about the file.
#include "paper/surface.h"
#include "paper/surface_bytes.h"

#include <cairo-pdf.h>

#include <fmt/format.h>

#include <stdexcept>
#include <vector>

namespace toehold::paper {
namespace {

void describe(cairo_surface_t* surface, const Properties& properties) {
    const auto set = [surface](cairo_pdf_metadata_t what, const std::string& words) {
        if (!words.empty()) cairo_pdf_surface_set_metadata(surface, what, words.c_str());
    };
    set(CAIRO_PDF_METADATA_TITLE, properties.title);
    set(CAIRO_PDF_METADATA_SUBJECT, properties.subject);
    set(CAIRO_PDF_METADATA_CREATOR, properties.program);
    // Left to itself the library asks the clock, and no two files are the same.
    set(CAIRO_PDF_METADATA_CREATE_DATE, properties.date.empty() ? "1970-01-01" : properties.date);
}

void add_destinations(cairo_t* cairo, const Sheet& sheet) {
    for (const Destination& one : sheet.destinations) {
        cairo_tag_begin(cairo, CAIRO_TAG_DEST,
                        fmt::format("name='{}' x=0 y={:.2f}", one.name, one.top_mm * points_per_mm).c_str());
        cairo_tag_end(cairo, CAIRO_TAG_DEST);
    }
}

void add_links(cairo_t* cairo, const Sheet& sheet) {
    for (const Link& link : sheet.links) {
        const std::string attributes = fmt::format("dest='{}' rect=[{:.2f} {:.2f} {:.2f} {:.2f}]", link.to,
                                                   link.area.left * points_per_mm, link.area.top * points_per_mm,
                                                   link.area.width * points_per_mm, link.area.height * points_per_mm);
        cairo_tag_begin(cairo, CAIRO_TAG_LINK, attributes.c_str());
        cairo_tag_end(cairo, CAIRO_TAG_LINK);
    }
}

void add_page(cairo_surface_t* surface, cairo_t* cairo, const Sheet& sheet) {
    cairo_pdf_surface_set_size(surface, sheet.size.width_mm * points_per_mm, sheet.size.height_mm * points_per_mm);
    add_destinations(cairo, sheet);
    paint(cairo, sheet, points_per_mm);
    add_links(cairo, sheet);
    cairo_show_page(cairo);
}

void add_bookmarks(cairo_surface_t* surface, const std::vector<Bookmark>& bookmarks) {
    std::vector<int> open{CAIRO_PDF_OUTLINE_ROOT};  // one for every level above the next
    for (const Bookmark& one : bookmarks) {
        const auto level = static_cast<std::size_t>(std::max(1, one.level));
        open.resize(std::min(open.size(), level));
        const auto flags = static_cast<cairo_pdf_outline_flags_t>(level == 1 ? CAIRO_PDF_OUTLINE_FLAG_BOLD : 0);
        open.push_back(cairo_pdf_surface_add_outline(surface, open.back(), one.words.c_str(),
                                                     fmt::format("dest='{}'", one.to).c_str(), flags));
    }
}

}  // namespace

std::string pdf(const Book& book) {
    if (book.sheets.empty()) throw std::runtime_error("a book without a sheet cannot be written");
    std::string bytes;
    const surface::Surface made(cairo_pdf_surface_create_for_stream(surface::append, &bytes, 1.0, 1.0));
    describe(made.get(), book.properties);
    {
        const surface::Context context(cairo_create(made.get()));
        for (const Sheet& sheet : book.sheets) add_page(made.get(), context.get(), sheet);
        add_bookmarks(made.get(), book.bookmarks);
        surface::require(cairo_status(context.get()));
    }
    surface::finish(made.get());
    return bytes;
}

}  // namespace toehold::paper
