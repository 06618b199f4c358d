// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// The attributes of an XML element, by local name.
class XmlAttributes {
 public:
  explicit XmlAttributes(const char** pairs) : pairs_(pairs) {}
  /// Valid during the call that brings it.
  [[nodiscard]] std::optional<std::string_view> find(std::string_view name) const;

 private:
  const char** pairs_;
};

/// What an XML document says, in its order; names are without their prefix.
struct XmlEvents {
  std::function<void(std::string_view name, const XmlAttributes&)> start = [](std::string_view,
                                                                              const XmlAttributes&) {};
  std::function<void(std::string_view name)> end = [](std::string_view) {};
  std::function<void(std::string_view text)> text = [](std::string_view) {};
};

/// expat, fed piece by piece. A document type declaration is refused: no spreadsheet has one, and it is how
/// documents grow without end. So is a tag or comment of more than 1 MB, which would have to be held whole.
class XmlReader {
 public:
  /// fileName and part are what messages call it.
  XmlReader(XmlEvents events, std::string fileName, std::string part);
  ~XmlReader();
  XmlReader(const XmlReader&) = delete;
  XmlReader& operator=(const XmlReader&) = delete;

  /// Throws FormatError where it is no XML, and whatever an event throws.
  void feed(std::string_view piece, bool last);

 private:
  class Work;
  std::unique_ptr<Work> work_;
};

}  // namespace tarebowl::exchange
