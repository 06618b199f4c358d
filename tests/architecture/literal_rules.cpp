// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/literal_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <regex>
#include <string_view>
#include <utility>

namespace tarebowl::architecture {

namespace {

/// The compiler's reader is none of the window's.
constexpr std::array<std::string_view, 7> kForTranslators = {
    "static_assert",      "tr", "translate", "QT_TR_NOOP", "QT_TRANSLATE_NOOP", "QT_TRANSLATE_NOOP3",
    "QT_TRANSLATE_N_NOOP"};

struct Exception {
  std::string_view path;
  std::string_view text;  ///< empty: all of the file
  std::string_view why;
};

constexpr std::array<Exception, 9> kNoText = {{
    {"ui/animals/change_story.cpp", "target profile", "a word of the change log"},
    {"ui/animals/change_story.cpp", "energy plan", "a word of the change log"},
    {"ui/animals/change_story.cpp", "add mass", "a word of the change log"},
    {"ui/animals/change_story.cpp", "add condition", "a word of the change log"},
    {"ui/animals/target_rows.cpp", "changed from: ", "a word of the file"},
    {"ui/diets/rotation_text.cpp", "hard rules", "a reason that the core names"},
    {"ui/diets/rules_pane.cpp", "own share of ", "an id in the file"},
    {"ui/shared/theme.cpp", "", "names of pairs of colours, for the test of their contrast"},
    {"ui/foods/import_desk.cpp", "a readable mapping (tarebowl-mapping/1), found none",
     "a fact of an error, as the readers of files word them"},
}};

bool isForTranslators(const std::vector<std::string>& calls) {
  return std::ranges::any_of(calls, [](const std::string& call) {
    return std::ranges::find(kForTranslators, call) != kForTranslators.end();
  });
}

bool isLanguage(const std::string& text) {
  static const std::regex kTwoWords("[A-Za-z]{2,},? [A-Za-z]{2,}");
  static const std::regex kMarkup("[<{]|\\w=\\\\?[\"']");
  static const std::regex kFormatOfDays("[dMyHhms ,.:]+");
  return std::regex_search(text, kTwoWords) && !std::regex_search(text, kMarkup) &&
         !std::regex_match(text, kFormatOfDays);
}

/// Reads code word by word; what it needs to know is in which call's brackets a literal stands.
class Reader {
 public:
  explicit Reader(const SourceFile& source) : source_(source) {}

  std::vector<Literal> read() {
    for (line_ = 0; line_ < source_.lines.size(); ++line_)
      if (!source_.lines[line_].starts_with("#include")) readLine(source_.lines[line_]);
    return std::move(found_);
  }

 private:
  void readLine(const std::string& line) {
    for (std::size_t at = 0; at < line.size();) {
      const char letter = line[at];
      if (isRaw_ || line.compare(at, 3, "R\"(") == 0) {
        at = skipRaw(line, at);
      } else if (line.compare(at, 2, "//") == 0) {
        return;
      } else if (letter == '"') {
        at = readLiteral(line, at);
      } else if (letter == '\'' && at > 0 && std::isdigit(static_cast<unsigned char>(line[at - 1])) != 0) {
        ++at;  // 1'000
      } else if (letter == '\'') {
        at = line.find('\'', at + (line[at + 1] == '\\' ? 3 : 2)) + 1;
      } else if (std::isalpha(static_cast<unsigned char>(letter)) != 0 || letter == '_') {
        at = readWord(line, at);
      } else {
        readBracket(letter);
        ++at;
      }
    }
  }

  /// Style sheets stand in raw literals, and no words of the window do.
  std::size_t skipRaw(const std::string& line, std::size_t at) {
    const std::size_t end = line.find(")\"", at);
    isRaw_ = end == std::string::npos;
    return isRaw_ ? line.size() : end + 2;
  }

  std::size_t readLiteral(const std::string& line, std::size_t at) {
    std::size_t end = at + 1;
    while (end < line.size() && line[end] != '"') end += line[end] == '\\' ? 2 : 1;
    const std::string text = line.substr(at + 1, end - at - 1);
    if (!isForTranslators(calls_) && isLanguage(text)) found_.push_back({line_ + 1, text});
    word_.clear();
    return end + 1;
  }

  std::size_t readWord(const std::string& line, std::size_t at) {
    std::size_t end = at;
    while (end < line.size() &&
           (std::isalnum(static_cast<unsigned char>(line[end])) != 0 || line[end] == '_'))
      ++end;
    word_ = line.substr(at, end - at);
    return end;
  }

  void readBracket(char letter) {
    if (letter == '(') calls_.push_back(word_);
    if (letter == ')' && !calls_.empty()) calls_.pop_back();
    if (letter != ' ') word_.clear();
  }

  const SourceFile& source_;
  std::size_t line_ = 0;
  bool isRaw_ = false;
  std::string word_;
  std::vector<std::string> calls_;
  std::vector<Literal> found_;
};

}  // namespace

std::vector<Literal> untranslatedWords(const SourceFile& source) {
  return Reader(source).read();
}

std::vector<Finding> checkTranslated(std::span<const SourceFile> sources) {
  std::vector<Finding> findings;
  for (const SourceFile& source : sources) {
    if (!source.path.starts_with("ui/") || !isCpp(source.path)) continue;
    for (const Literal& literal : untranslatedWords(source)) {
      const bool isNoText = std::ranges::any_of(kNoText, [&](const Exception& known) {
        return known.path == source.path && (known.text.empty() || known.text == literal.text);
      });
      if (!isNoText)
        findings.push_back({source.path, literal.line, "is not for translators: \"" + literal.text + '"'});
    }
  }
  return findings;
}

}  // namespace tarebowl::architecture
