// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/encoding.h"

#include <fmt/format.h>
#include <unicode/ucnv.h>
#include <unicode/ustring.h>
#include <unicode/utf8.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>
#include <vector>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 5> kWords{"utf-8", "utf-16le", "utf-16be", "windows-1252", "latin-1"};
// ICU reads the bytes that Windows-1252 leaves undefined (0x81 …) as controls; a table reader refuses those.
constexpr std::array<const char*, 5> kIcuNames{"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "ISO-8859-1"};

struct ConverterCloser {
  void operator()(UConverter* converter) const { ucnv_close(converter); }
};
using Converter = std::unique_ptr<UConverter, ConverterCloser>;

Converter openConverter(Encoding encoding) {
  UErrorCode status = U_ZERO_ERROR;
  Converter converter(ucnv_open(kIcuNames.at(static_cast<std::size_t>(encoding)), &status));
  if (U_FAILURE(status)) throw std::runtime_error("no converter: " + std::string(u_errorName(status)));
  ucnv_setToUCallBack(converter.get(), UCNV_TO_U_CALLBACK_STOP, nullptr, nullptr, nullptr, &status);
  return converter;
}

bool isAscii(char c) {
  return static_cast<unsigned char>(c) < 0x80;
}

// ICU's macro narrows within itself.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
/// The character at this place, which is moved behind it; negative where there is none.
UChar32 nextLetter(std::string_view bytes, std::int32_t& at) {
  const auto length = static_cast<std::int32_t>(bytes.size());
  UChar32 letter = 0;
  U8_NEXT(bytes.data(), at, length, letter);
  return letter;
}
#pragma GCC diagnostic pop

/// A character that begins well and is cut off by the end of what was read.
bool isCutOff(std::string_view rest) {
  const auto first = static_cast<unsigned char>(rest.front());
  const std::size_t wanted = first >= 0xF0 && first <= 0xF4 ? 4 : first >= 0xE0 ? 3 : 2;
  if (first < 0xC2 || first > 0xF4 || rest.size() >= wanted) return false;
  return std::ranges::all_of(rest.substr(1),
                             [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; });
}

/// How many characters beyond ASCII are well-formed UTF-8 and how many bytes are not. A character that the
/// end cuts off, where it is not the last, counts as neither.
struct Utf8Evidence {
  std::size_t letters = 0;
  std::size_t strays = 0;
  std::size_t validBytes = 0;  ///< up to the first stray or to the character that the end cuts off
};

Utf8Evidence weigh(std::string_view bytes, bool last) {
  Utf8Evidence evidence;
  const auto length = static_cast<std::int32_t>(bytes.size());
  std::int32_t at = 0;
  bool sound = true;
  while (at < length) {
    if (isAscii(bytes[static_cast<std::size_t>(at)])) {
      ++at;
      continue;
    }
    if (sound) evidence.validBytes = static_cast<std::size_t>(at);
    std::int32_t next = at;
    const UChar32 letter = nextLetter(bytes, next);
    if (letter < 0 && !last && isCutOff(bytes.substr(static_cast<std::size_t>(at)))) return evidence;
    if (letter < 0) {
      ++evidence.strays;
      sound = false;
    } else {
      ++evidence.letters;
    }
    at = next;
  }
  if (sound) evidence.validBytes = bytes.size();
  return evidence;
}

std::optional<Encoding> encodingOfZeros(std::string_view bytes) {
  constexpr std::size_t kEnough = 4;
  if (bytes.size() < kEnough) return std::nullopt;
  const std::size_t pairs = std::min<std::size_t>(bytes.size() / 2, 500);
  std::size_t evenZeros = 0;
  std::size_t oddZeros = 0;
  for (std::size_t i = 0; i < pairs; ++i) {
    evenZeros += bytes[2 * i] == '\0' ? 1 : 0;
    oddZeros += bytes[2 * i + 1] == '\0' ? 1 : 0;
  }
  if (oddZeros * 2 > pairs && evenZeros == 0) return Encoding::Utf16LittleEndian;
  if (evenZeros * 2 > pairs && oddZeros == 0) return Encoding::Utf16BigEndian;
  return std::nullopt;
}

}  // namespace

std::string_view symbolOf(Encoding encoding) {
  return kWords.at(static_cast<std::size_t>(encoding));
}

std::optional<Encoding> parseEncoding(std::string_view text) {
  const auto* place = std::ranges::find(kWords, text);
  if (place == kWords.end()) return std::nullopt;
  return static_cast<Encoding>(place - kWords.begin());
}

class TextDecoder::Work {
 public:
  explicit Work(std::optional<Encoding> stated) : encoding_(stated) {}

  bool decode(std::string_view bytes, bool last, std::string& text) {
    if (!begun_ || !pending_.empty()) {
      pending_.append(bytes);
      if (!begun_ && !last && pending_.size() < kHead) return true;
      const std::string held = std::exchange(pending_, {});
      return decodeHeld(held, last, text);
    }
    return decodeHeld(bytes, last, text);
  }

  std::optional<Encoding> encoding_;
  std::string objection_;

 private:
  static constexpr std::size_t kHead = 1024;

  bool decodeHeld(std::string_view bytes, bool last, std::string& text) {
    if (!begun_) {
      begun_ = true;
      bytes.remove_prefix(begin(bytes));
    }
    if (!encoding_) {
      const auto* const end = std::ranges::find_if_not(bytes, isAscii);
      text.append(bytes.begin(), end);
      bytes.remove_prefix(static_cast<std::size_t>(end - bytes.begin()));
      if (bytes.empty()) return true;
      // Enough of what follows to judge by.
      if (bytes.size() < kHead && !last) {
        pending_ = bytes;
        return true;
      }
      encoding_ = judge(bytes, last);
      if (!encoding_) return refuseMixture(bytes, text);
    }
    return *encoding_ == Encoding::Utf8 ? copyUtf8(bytes, last, text) : convert(bytes, last, text);
  }

  /// Takes the encoding from the byte order mark, whose length it returns, or from the zero bytes.
  std::size_t begin(std::string_view bytes) {
    struct Mark {
      std::string_view bytes;
      Encoding encoding;
    };
    constexpr std::array<Mark, 3> kMarks{{{"\xEF\xBB\xBF", Encoding::Utf8},
                                          {"\xFF\xFE", Encoding::Utf16LittleEndian},
                                          {"\xFE\xFF", Encoding::Utf16BigEndian}}};
    for (const Mark& mark : kMarks) {
      if (!bytes.starts_with(mark.bytes) || (encoding_ && *encoding_ != mark.encoding)) continue;
      encoding_ = mark.encoding;
      return mark.bytes.size();
    }
    if (!encoding_) encoding_ = encodingOfZeros(bytes);
    return 0;
  }

  static std::optional<Encoding> judge(std::string_view bytes, bool last) {
    const Utf8Evidence evidence = weigh(bytes, last);
    if (evidence.strays == 0) return Encoding::Utf8;
    if (evidence.letters > 0) return std::nullopt;
    return Encoding::Windows1252;
  }

  bool refuse(std::string_view bytes, std::size_t at, std::string_view what) {
    objection_ = fmt::format("{}, found the byte 0x{:02X}", what, static_cast<unsigned char>(bytes[at]));
    return false;
  }

  bool refuseMixture(std::string_view bytes, std::string& text) {
    const std::size_t valid = weigh(bytes, true).validBytes;
    text.append(bytes.substr(0, valid));
    return refuse(bytes, valid, "one encoding throughout (some letters here are UTF-8 and some are not)");
  }

  bool copyUtf8(std::string_view bytes, bool last, std::string& text) {
    const std::size_t valid =
        std::ranges::all_of(bytes, isAscii) ? bytes.size() : weigh(bytes, last).validBytes;
    text.append(bytes.substr(0, valid));
    const auto rest = bytes.substr(valid);
    if (rest.empty()) return true;
    if (!last && rest.size() < 4 && weigh(rest, false).strays == 0) {
      pending_ = rest;
      return true;
    }
    return refuse(bytes, valid, "UTF-8 throughout");
  }

  bool convert(std::string_view bytes, bool last, std::string& text) {
    if (!converter_) converter_ = openConverter(*encoding_);
    wide_.resize(bytes.size() + 8);
    const char* from = bytes.data();
    UChar* to = wide_.data();
    UErrorCode status = U_ZERO_ERROR;
    ucnv_toUnicode(converter_.get(), &to, wide_.data() + wide_.size(), &from, bytes.data() + bytes.size(),
                   nullptr, static_cast<UBool>(last), &status);
    appendUtf8(static_cast<std::size_t>(to - wide_.data()), text);
    if (U_SUCCESS(status)) return true;
    const std::size_t read = static_cast<std::size_t>(from - bytes.data());
    return refuse(bytes, read > 0 ? read - 1 : 0, fmt::format("text in {} throughout", symbolOf(*encoding_)));
  }

  void appendUtf8(std::size_t length, std::string& text) {
    const std::size_t before = text.size();
    text.resize(before + 3 * length);
    std::int32_t written = 0;
    UErrorCode status = U_ZERO_ERROR;
    u_strToUTF8WithSub(text.data() + before, static_cast<std::int32_t>(3 * length), &written, wide_.data(),
                       static_cast<std::int32_t>(length), 0xFFFD, nullptr, &status);
    text.resize(before + static_cast<std::size_t>(written));
  }

  bool begun_ = false;
  std::string pending_;
  Converter converter_;
  std::vector<UChar> wide_;
};

TextDecoder::TextDecoder(std::optional<Encoding> stated) : work_(std::make_unique<Work>(stated)) {}
TextDecoder::~TextDecoder() = default;
TextDecoder::TextDecoder(TextDecoder&&) noexcept = default;
TextDecoder& TextDecoder::operator=(TextDecoder&&) noexcept = default;

bool TextDecoder::decode(std::string_view bytes, bool last, std::string& text) {
  return work_->decode(bytes, last, text);
}

std::optional<Encoding> TextDecoder::encoding() const {
  return work_->encoding_;
}

const std::string& TextDecoder::objection() const {
  return work_->objection_;
}

}  // namespace tarebowl::exchange
