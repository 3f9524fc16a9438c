#include "paper/surface_bytes.h"

#include <stdexcept>
#include <string>

namespace toehold::paper::surface {

cairo_status_t append(void* bytes, const unsigned char* data, unsigned length) {
    // An exception must not pass through the library's C.
    try {
        for (unsigned index = 0; index < length; ++index) {
            static_cast<std::string*>(bytes)->push_back(static_cast<char>(data[index]));
        }
    } catch (...) {
        return CAIRO_STATUS_WRITE_ERROR;
    }
    return CAIRO_STATUS_SUCCESS;
}

void require(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("the paper could not be drawn: ") + cairo_status_to_string(status));
}

void finish(cairo_surface_t* surface) {
    cairo_surface_finish(surface);
    require(cairo_surface_status(surface));
}

}  // namespace toehold::paper::surface
