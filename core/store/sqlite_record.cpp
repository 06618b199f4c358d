// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_record.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>

namespace tarebowl::store {

namespace {

constexpr std::array<std::size_t, 10> kSizes{0, 1, 2, 3, 4, 6, 8, 8, 0, 0};  // by the kind of a value
constexpr std::uint64_t kReal = 7;
constexpr std::uint64_t kZero = 8;
constexpr std::uint64_t kOne = 9;
constexpr std::uint64_t kFirstText = 13;

bool isText(std::uint64_t kind) {
  return kind >= kFirstText && kind % 2 == 1;
}

std::uint64_t sizeOf(std::uint64_t kind) {
  return isText(kind) ? (kind - kFirstText) / 2 : kSizes.at(static_cast<std::size_t>(kind));
}

bool isKnown(std::uint64_t kind) {
  return kind <= kOne || isText(kind);
}

/// How many bytes follow the first one of a character in UTF-8; nothing where none begins so.
std::optional<std::size_t> bytesAfter(unsigned char first) {
  if (first < 0x80) return 0;
  if (first >= 0xc2 && first < 0xe0) return 1;
  if (first >= 0xe0 && first < 0xf0) return 2;
  if (first >= 0xf0 && first < 0xf5) return 3;
  return std::nullopt;
}

bool isReadable(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto first = static_cast<unsigned char>(text[i]);
    const bool isControl = (first < 0x20 && first != '\n' && first != '\t' && first != '\r') || first == 0x7f;
    const auto further = bytesAfter(first);
    if (isControl || !further || i + *further >= text.size()) return false;
    for (std::size_t k = 0; k < *further; ++k)
      if ((static_cast<unsigned char>(text[++i]) & 0xc0U) != 0x80U) return false;
  }
  return true;
}

std::uint64_t unsignedIn(std::string_view bytes) {
  // A number below zero is written in as few bytes as it needs: the first one tells its sign.
  std::uint64_t value = !bytes.empty() && (static_cast<unsigned char>(bytes[0]) & 0x80U) != 0 ? ~0ULL : 0;
  for (const char byte : bytes) value = (value << 8U) | static_cast<unsigned char>(byte);
  return value;
}

std::optional<PageValue> valueIn(std::uint64_t kind, std::string_view bytes) {
  if (kind == 0) return PageValue();
  if (kind == kZero) return PageValue(std::int64_t{0});
  if (kind == kOne) return PageValue(std::int64_t{1});
  if (kind == kReal) {
    const auto real = std::bit_cast<double>(unsignedIn(bytes));
    return std::isfinite(real) ? std::optional(PageValue(real)) : std::nullopt;
  }
  if (kind < kReal) return PageValue(static_cast<std::int64_t>(unsignedIn(bytes)));
  if (!isReadable(bytes)) return std::nullopt;
  return PageValue(std::string(bytes));
}

}  // namespace

std::uint32_t bigEndian(std::string_view bytes, std::size_t at, std::size_t width) {
  std::uint32_t value = 0;
  for (std::size_t i = at; i < at + width; ++i)
    value = (value << 8U) | (i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U);
  return value;
}

unsigned char Cursor::byte() {
  if (at_ >= bytes_.size()) {
    sound_ = false;
    return 0;
  }
  return static_cast<unsigned char>(bytes_[at_++]);
}

std::uint32_t Cursor::fixed(std::size_t width) {
  std::uint32_t value = 0;
  for (std::size_t i = 0; i < width; ++i) value = (value << 8U) | byte();
  return value;
}

std::uint64_t Cursor::varint() {
  std::uint64_t value = 0;
  for (int i = 0; i < 8; ++i) {
    const unsigned char next = byte();
    value = (value << 7U) | (next & 0x7fU);
    if ((next & 0x80U) == 0) return value;
  }
  return (value << 8U) | byte();
}

std::optional<std::vector<PageValue>> recordIn(std::string_view payload) {
  Cursor header(payload, 0);
  const std::uint64_t headerSize = header.varint();
  if (headerSize == 0 || headerSize > payload.size()) return std::nullopt;
  std::vector<PageValue> values;
  std::size_t at = static_cast<std::size_t>(headerSize);
  while (header.isSound() && header.place() < headerSize) {
    const std::uint64_t kind = header.varint();
    if (!isKnown(kind) || sizeOf(kind) > payload.size() - at) return std::nullopt;
    const std::size_t size = static_cast<std::size_t>(sizeOf(kind));
    auto value = valueIn(kind, payload.substr(at, size));
    if (!value) return std::nullopt;
    values.push_back(std::move(*value));
    at += size;
  }
  if (!header.isSound() || header.place() != headerSize || at != payload.size()) return std::nullopt;
  return values;
}

}  // namespace tarebowl::store
