// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/zip_archive.h"

namespace tarebowl::exchange {

namespace {

/// The checksum of ZIP archives (CRC-32, polynomial 0xEDB88320).
std::uint32_t checksumOf(const std::string& content) {
  std::uint32_t sum = 0xffffffff;
  for (const char c : content) {
    sum ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) sum = (sum >> 1U) ^ ((sum & 1U) != 0 ? 0xedb88320U : 0U);
  }
  return ~sum;
}

/// Little-endian, as the archive writes it.
void put(std::vector<std::uint8_t>& bytes, std::uint64_t number, int width) {
  for (int i = 0; i < width; ++i, number >>= 8U) bytes.push_back(static_cast<std::uint8_t>(number));
}

void put(std::vector<std::uint8_t>& bytes, const std::string& text) {
  bytes.insert(bytes.end(), text.begin(), text.end());
}

/// What a member's own header and its line in the directory share.
void putDescription(std::vector<std::uint8_t>& bytes, const std::string& name, const std::string& content) {
  put(bytes, 20, 2);  // version
  put(bytes, 0, 2);   // flags
  put(bytes, 0, 2);   // stored
  put(bytes, 0, 4);   // time and day
  put(bytes, checksumOf(content), 4);
  put(bytes, content.size(), 4);
  put(bytes, content.size(), 4);
  put(bytes, name.size(), 2);
  put(bytes, 0, 2);  // nothing further
}

}  // namespace

std::vector<std::uint8_t> archiveOf(const std::vector<std::pair<std::string, std::string>>& members) {
  std::vector<std::uint8_t> bytes;
  std::vector<std::uint8_t> directory;
  for (const auto& [name, content] : members) {
    put(directory, 0x02014b50, 4);
    put(directory, 20, 2);  // made by
    putDescription(directory, name, content);
    put(directory, 0, 2 + 2 + 2 + 4);  // no comment, first disk, no attributes
    put(directory, bytes.size(), 4);
    put(directory, name);
    put(bytes, 0x04034b50, 4);
    putDescription(bytes, name, content);
    put(bytes, name);
    put(bytes, content);
  }
  const std::size_t start = bytes.size();
  bytes.insert(bytes.end(), directory.begin(), directory.end());
  put(bytes, 0x06054b50, 4);
  put(bytes, 0, 2 + 2);
  put(bytes, members.size(), 2);
  put(bytes, members.size(), 2);
  put(bytes, directory.size(), 4);
  put(bytes, start, 4);
  put(bytes, 0, 2);
  return bytes;
}

}  // namespace tarebowl::exchange
