// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/plugin/zip_functions.h"

#include <array>
#include <memory>
#include <zip.h>

namespace piolo::score {

namespace {

struct Closing {
    void operator()(zip_t* archive) const { zip_discard(archive); }
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using Archive = std::unique_ptr<zip_t, Closing>;
using Entry = std::unique_ptr<zip_file_t, Closing>;

/// The bytes must outlive the archive.
Archive open(std::string_view bytes) {
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, nullptr);
    if (source == nullptr) return nullptr;
    Archive archive(zip_open_from_source(source, ZIP_RDONLY, nullptr));
    if (!archive) zip_source_free(source);
    return archive;
}

/// Sizes stated in the archive are not trusted: bytes are counted as they arrive.
Result<std::string> entry(std::string_view bytes, const std::string& name, std::size_t most,
                          const Fault& absent) {
    const Archive archive = open(bytes);
    if (!archive) return Fault{FaultNumber::brokenArchive, absent.location, {}};
    const Entry file(zip_fopen(archive.get(), name.c_str(), 0));
    if (!file) return absent;
    std::string unpacked;
    std::array<char, 65'536> block{};
    for (;;) {
        const auto count = zip_fread(file.get(), block.data(), block.size());
        if (count == 0) return unpacked;
        if (count < 0) return Fault{FaultNumber::brokenArchive, absent.location, {}};
        if (unpacked.size() + static_cast<std::size_t>(count) > most)
            return Fault{FaultNumber::scoreTooLarge, absent.location, {std::to_string(most / 1024) + " KiB"}};
        unpacked.append(block.data(), static_cast<std::size_t>(count));
    }
}

} // namespace

} // namespace piolo::score

extern "C" const piolo::score::ZipFunctions pioloZip{piolo::score::entry};
