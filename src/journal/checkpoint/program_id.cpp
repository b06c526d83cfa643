// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/checkpoint/program_id.h"

#include <algorithm>
#include <cstring>
#include <elf.h>
#include <link.h>
#include <string_view>

namespace piolo::journal {

namespace {

std::size_t wordAligned(std::size_t size) { return (size + 3) / 4 * 4; }

/// The build id in the notes of a segment.
std::string idAmong(std::string_view notes) {
    constexpr std::string_view gnu("GNU\0", 4); // with its end
    ElfW(Nhdr) head{};
    while (notes.size() >= sizeof head) {
        std::memcpy(&head, notes.data(), sizeof head);
        notes.remove_prefix(sizeof head);
        const std::size_t name = wordAligned(head.n_namesz);
        if (name + head.n_descsz > notes.size()) break;
        if (head.n_type == NT_GNU_BUILD_ID && notes.substr(0, head.n_namesz) == gnu)
            return std::string(notes.substr(name, head.n_descsz));
        notes.remove_prefix(std::min(name + wordAligned(head.n_descsz), notes.size()));
    }
    return {};
}

std::uintptr_t addressIn(const dl_phdr_info& object, std::size_t offset) { return object.dlpi_addr + offset; }

/// Whether this very code is part of the object: the program or a library of it.
bool isOurs(const dl_phdr_info& object) {
    const auto here = reinterpret_cast<std::uintptr_t>(&programId);
    for (int i = 0; i < object.dlpi_phnum; ++i) {
        const auto& segment = object.dlpi_phdr[i];
        const std::uintptr_t begin = addressIn(object, segment.p_vaddr);
        if (segment.p_type == PT_LOAD && here >= begin && here - begin < segment.p_memsz) return true;
    }
    return false;
}

/// Called for each object until it returns something other than 0.
int readNotes(dl_phdr_info* object, std::size_t, void* id) {
    if (!isOurs(*object)) return 0;
    for (int i = 0; i < object->dlpi_phnum; ++i) {
        const auto& segment = object->dlpi_phdr[i];
        if (segment.p_type != PT_NOTE) continue;
        // NOLINTNEXTLINE(performance-no-int-to-ptr): that is how the loader gives addresses
        const auto* at = reinterpret_cast<const char*>(addressIn(*object, segment.p_vaddr));
        auto found = idAmong({at, segment.p_memsz});
        if (found.empty()) continue;
        *static_cast<std::string*>(id) = std::move(found);
        break;
    }
    return 1;
}

} // namespace

std::string programId() {
    std::string id;
    ::dl_iterate_phdr(readNotes, &id);
    return id;
}

} // namespace piolo::journal
