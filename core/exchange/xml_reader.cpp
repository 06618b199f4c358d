// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/xml_reader.h"

#include "core/exchange/problem_json.h"

#include <expat.h>
#include <fmt/format.h>

#include <exception>
#include <new>
#include <utility>

namespace tarebowl::exchange {

namespace {

std::string_view localName(const char* name) {
  const std::string_view whole(name);
  const auto colon = whole.rfind(':');
  return colon == std::string_view::npos ? whole : whole.substr(colon + 1);
}

constexpr std::size_t kLongestTag = std::size_t{1} << 20U;

struct ParserCloser {
  void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};

}  // namespace

std::optional<std::string_view> XmlAttributes::find(std::string_view name) const {
  for (const char** pair = pairs_; *pair != nullptr; pair += 2)
    if (localName(pair[0]) == name) return pair[1];
  return std::nullopt;
}

class XmlReader::Work {
 public:
  Work(XmlEvents events, std::string fileName, std::string part)
      : events_(std::move(events)),
        fileName_(std::move(fileName)),
        part_(std::move(part)),
        parser_(XML_ParserCreate(nullptr)) {
    if (!parser_) throw std::bad_alloc();
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(parser_.get(), onStart, onEnd);
    XML_SetCharacterDataHandler(parser_.get(), onText);
    XML_SetStartDoctypeDeclHandler(parser_.get(), onDoctype);
  }

  void feed(std::string_view piece, bool last) {
    quiet_ += piece.size();
    if (quiet_ > kLongestTag)
      throw FormatError(fileName_, part_, fmt::format("tags of at most {} MB", kLongestTag >> 20U));
    const auto status = XML_Parse(parser_.get(), piece.data(), static_cast<int>(piece.size()), last ? 1 : 0);
    if (error_) std::rethrow_exception(error_);
    if (status != XML_STATUS_OK)
      throw FormatError(
          fileName_, part_,
          fmt::format("XML, found at line {}, column {}: {}", XML_GetCurrentLineNumber(parser_.get()),
                      XML_GetCurrentColumnNumber(parser_.get()) + 1,
                      XML_ErrorString(XML_GetErrorCode(parser_.get()))));
  }

 private:
  /// An exception must not pass through the C library: it is kept and thrown behind it.
  template <class Event>
  static void guarded(void* data, Event event) {
    auto& self = *static_cast<Work*>(data);
    if (self.error_) return;
    self.quiet_ = 0;
    try {
      event(self);
    } catch (...) {
      self.error_ = std::current_exception();
      XML_StopParser(self.parser_.get(), XML_FALSE);
    }
  }
  static void onStart(void* data, const char* name, const char** attributes) {
    guarded(data, [&](Work& self) { self.events_.start(localName(name), XmlAttributes(attributes)); });
  }
  static void onEnd(void* data, const char* name) {
    guarded(data, [&](Work& self) { self.events_.end(localName(name)); });
  }
  static void onText(void* data, const char* text, int length) {
    guarded(data, [&](Work& self) { self.events_.text({text, static_cast<std::size_t>(length)}); });
  }
  static void onDoctype(void* data, const char* /*name*/, const char* /*system*/, const char* /*open*/,
                        int /*subset*/) {
    guarded(data, [](Work& self) {
      throw FormatError(self.fileName_, self.part_, "a spreadsheet without a document type declaration");
    });
  }

  XmlEvents events_;
  std::string fileName_;
  std::string part_;
  std::unique_ptr<XML_ParserStruct, ParserCloser> parser_;
  std::exception_ptr error_;
  std::size_t quiet_ = 0;  ///< bytes since the document last said something
};

XmlReader::XmlReader(XmlEvents events, std::string fileName, std::string part)
    : work_(std::make_unique<Work>(std::move(events), std::move(fileName), std::move(part))) {}

XmlReader::~XmlReader() = default;

void XmlReader::feed(std::string_view piece, bool last) {
  work_->feed(piece, last);
}

}  // namespace tarebowl::exchange
