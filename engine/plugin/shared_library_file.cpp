#include "plugin/shared_library_file.h"

#include <elf.h>

#include <bit>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <ios>
#include <optional>
#include <system_error>

namespace toehold::plugin {
namespace {

namespace fs = std::filesystem;
using format::Phrase;
using format::phrase;

Phrase cut_short() { return phrase("is cut short: it ends before the parts its own tables name"); }

template <class Record>
std::optional<Record> read_at(std::ifstream& stream, std::uint64_t offset) {
    Record record{};
    stream.clear();
    stream.seekg(static_cast<std::streamoff>(offset));
    stream.read(reinterpret_cast<char*>(&record), sizeof record);
    if (!stream) return std::nullopt;
    return record;
}

/// Written so that no sum can wrap round.
bool lies_within(std::uint64_t offset, std::uint64_t length, std::uint64_t size) {
    return offset <= size && length <= size - offset;
}

Phrase header_problem(const Elf64_Ehdr& header) {
    if (std::memcmp(header.e_ident, ELFMAG, SELFMAG) != 0) return phrase("is not a shared library");
    constexpr unsigned char byte_order = std::endian::native == std::endian::little ? ELFDATA2LSB : ELFDATA2MSB;
    if (header.e_ident[EI_CLASS] != ELFCLASS64 || header.e_ident[EI_DATA] != byte_order)
        return phrase("is a library for another kind of machine");
    if (header.e_type != ET_DYN) return phrase("is not a shared library");
    const bool no_program = header.e_phnum == 0 || header.e_phentsize != sizeof(Elf64_Phdr);
    return no_program ? phrase("is a damaged shared library") : Phrase();
}

Phrase contents_problem(std::ifstream& stream, std::uint64_t size) {
    const auto header = read_at<Elf64_Ehdr>(stream, 0);
    if (!header) return phrase("is not a shared library");
    if (Phrase problem = header_problem(*header); !problem.empty()) return problem;
    const std::uint64_t sections = std::uint64_t{header->e_shnum} * header->e_shentsize;
    if (!lies_within(header->e_shoff, sections, size)) return cut_short();
    for (std::uint64_t index = 0; index < header->e_phnum; ++index) {
        if (!lies_within(header->e_phoff, (index + 1) * sizeof(Elf64_Phdr), size)) return cut_short();
        const auto segment = read_at<Elf64_Phdr>(stream, header->e_phoff + index * sizeof(Elf64_Phdr));
        if (!segment || !lies_within(segment->p_offset, segment->p_filesz, size)) return cut_short();
    }
    return {};
}

}  // namespace

format::Phrase library_problem(const fs::path& file) {
    std::error_code error;
    const fs::file_status status = fs::status(file, error);
    if (!fs::exists(status)) return phrase("does not exist");
    if (fs::is_directory(status)) return phrase("is a folder");
    if (!fs::is_regular_file(status)) return phrase("is not a regular file");
    const std::uintmax_t size = fs::file_size(file, error);
    if (error) return phrase("cannot be read: {}", error.message());
    if (size == 0) return phrase("is empty");
    std::ifstream stream(file, std::ios::binary);
    if (!stream) return phrase("cannot be read");
    return contents_problem(stream, size);
}

}  // namespace toehold::plugin
