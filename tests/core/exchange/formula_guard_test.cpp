// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/formula_guard.h"

#include "core/exchange/row_writer.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <sstream>

namespace tarebowl::exchange {
namespace {

std::string written(const std::vector<Cell>& row) {
  std::ostringstream out;
  CsvWriter(out).write(row);
  return out.str();
}

TEST(FormulaGuard, ANameThatASpreadsheetWouldRunIsWrittenAsText) {
  EXPECT_EQ(written({"=HYPERLINK(\"a\")"}), "\"'=HYPERLINK(\"\"a\"\")\"\r\n");
  EXPECT_EQ(written({"+1+cmd", "-a", "@x", "\t=1"}), "'+1+cmd,'-a,'@x,\"'\t=1\"\r\n");
}

TEST(FormulaGuard, NumbersAndOrdinaryNamesStayAsTheyAre) {
  EXPECT_EQ(written({"-3.5", -3.5, "kale", "a=b", "<0.5", ""}), "-3.5,-3.5,kale,a=b,<0.5,\r\n");
}

RC_GTEST_PROP(FormulaGuard, WhatIsWrittenReadsBack, ()) {
  std::string text;
  for (const auto& piece : *rc::gen::container<std::vector<std::string>>(
           rc::gen::elementOf(std::vector<std::string>{"=", "+", "-", "@", "'", " ", "1", "kale"})))
    text += piece;
  RC_ASSERT(withoutGuard(guarded(text)) == text);
}

}  // namespace
}  // namespace tarebowl::exchange
