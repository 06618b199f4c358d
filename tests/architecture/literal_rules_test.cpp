// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/literal_rules.h"

#include "tests/source_dir.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::architecture {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(WordsOfTheWindow, AllGoThroughTranslation) {
  const auto findings = checkTranslated(readSources(TAREBOWL_SOURCE_DIR));
  EXPECT_TRUE(findings.empty()) << describe(findings);
}

TEST(UntranslatedWords, AreFoundOutsideOfCallsForTranslators) {
  const SourceFile source{
      "ui/a.cpp",
      {"label->setText(QStringLiteral(\"two words\"));", "label->setText(tr(\"two words\"));",
       "say(tr(\"%1 is late\",", "       \"what a hand reads\").arg(\"some more\"));", "// \"in a comment\"",
       "const char* kName = \"a whole sentence, here\";"}};
  EXPECT_THAT(untranslatedWords(source), ElementsAre(Literal{1, "two words"}, Literal{4, "some more"},
                                                     Literal{6, "a whole sentence, here"}));
}

TEST(UntranslatedWords, AreNoMarkupStyleNamesOrFormats) {
  const SourceFile source{
      "ui/a.cpp",
      {"a(\"<b class=x>two words</b>\");", "b(\"QLabel { color: red }\");", "c(\"dd MMM yyyy\");",
       "d(\"listPane\", '\"', 1'000, \"tarebowl.ini\");", "e(R\"(rail text", "is long)\");"}};
  EXPECT_THAT(untranslatedWords(source), IsEmpty());
}

}  // namespace
}  // namespace tarebowl::architecture
