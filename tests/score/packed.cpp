// SPDX-License-Identifier: GPL-3.0-or-later
#include "packed.h"

namespace piolo::test {

namespace {

std::string little(std::uint64_t value, int bytes) {
    std::string text;
    for (int i = 0; i < bytes; ++i) text += static_cast<char>(value >> (8 * i));
    return text;
}

std::uint32_t crcOf(const std::string& bytes) {
    std::uint32_t crc = 0xFFFFFFFF;
    for (const char byte : bytes) {
        crc ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1) != 0 ? 0xEDB88320 : 0);
    }
    return ~crc;
}

/// The common part of local and central headers: version, flags, method, time, CRC, sizes, length of the
/// name.
std::string description(const PackedFile& file) {
    const std::uint64_t size = file.claimed != 0 ? file.claimed : file.bytes.size();
    return little(20, 2) + little(0, 2) + little(0, 2) + little(0, 4) + little(crcOf(file.bytes), 4) +
           little(file.bytes.size(), 4) + little(size, 4) + little(file.name.size(), 2) + little(0, 2);
}

} // namespace

std::string packed(const std::vector<PackedFile>& files) {
    std::string all;
    std::string directory;
    for (const PackedFile& file : files) {
        directory += "PK\x01\x02" + little(20, 2) + description(file) + little(0, 2) + little(0, 2) +
                     little(0, 2) + little(0, 4) + little(all.size(), 4) + file.name;
        all += "PK\x03\x04" + description(file) + file.name + file.bytes;
    }
    return all + directory + "PK\x05\x06" + little(0, 4) + little(files.size(), 2) + little(files.size(), 2) +
           little(directory.size(), 4) + little(all.size(), 4) + little(0, 2);
}

std::string containerFor(const std::string& path) {
    return "<?xml version=\"1.0\"?>\n<container><rootfiles><rootfile full-path=\"" + path +
           "\"/></rootfiles></container>";
}

} // namespace piolo::test
