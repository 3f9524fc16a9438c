#pragma once
// What every kind of file needs of the drawing library: owning its objects, its bytes in a string, its errors said.
#include <cairo.h>

#include <memory>

namespace toehold::paper::surface {

struct Release {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
    void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
};
using Surface = std::unique_ptr<cairo_surface_t, Release>;
using Context = std::unique_ptr<cairo_t, Release>;

/// `bytes`: a std::string.
cairo_status_t append(void* bytes, const unsigned char* data, unsigned length);
/// Throws std::runtime_error unless it is success.
void require(cairo_status_t status);
/// All bytes are there after this; throws std::runtime_error where something went wrong on the way.
void finish(cairo_surface_t* surface);

}  // namespace toehold::paper::surface
