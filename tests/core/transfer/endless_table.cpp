// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/transfer/endless_table.h"

#include "core/food/nutrient.h"

#include <fmt/format.h>

#include <functional>
#include <istream>
#include <streambuf>
#include <utility>

namespace tarebowl::transfer {

namespace {

/// The text of a food's records; food 0 is the header.
using Lines = std::function<std::string(std::size_t food)>;

class MadeText : public std::streambuf {
 public:
  MadeText(Lines lines, std::size_t foods) : lines_(std::move(lines)), foods_(foods) {}

 protected:
  int_type underflow() override {
    if (next_ > foods_) return traits_type::eof();
    text_ = lines_(next_++);
    setg(text_.data(), text_.data(), text_.data() + text_.size());
    return traits_type::to_int_type(*gptr());
  }

 private:
  Lines lines_;
  std::size_t foods_;
  std::size_t next_ = 0;
  std::string text_;
};

class MadeStream : public std::istream {
 public:
  MadeStream(const Lines& lines, std::size_t foods) : std::istream(nullptr), text_(lines, foods) {
    rdbuf(&text_);
  }

 private:
  MadeText text_;
};

exchange::TableInput tableOf(const Lines& lines, std::size_t foods) {
  return {.name = "made.csv", .open = [=] { return std::make_unique<MadeStream>(lines, foods); }};
}

std::string_view tagname(std::size_t nutrient) {
  return food::allNutrients()[nutrient].tagname;
}

/// Small enough to be an amount of anything in 100 g.
double amount(std::size_t food, std::size_t nutrient) {
  return 1e-6 * static_cast<double>(1 + food % 100'000) + 1e-7 * static_cast<double>(nutrient % 9);
}

}  // namespace

exchange::TableInput longTable(std::size_t foods, std::size_t valuesOfFood) {
  return tableOf(
      [=](std::size_t food) {
        if (food == 0) return std::string("Code,Food,Nutrient,Value\n");
        std::string text;
        for (std::size_t n = 0; n < valuesOfFood; ++n)
          text += fmt::format("{0},Invented food {0},{1},{2:.7f}\n", food, tagname(n), amount(food, n));
        return text;
      },
      foods);
}

exchange::TableInput wideTable(std::size_t foods, std::size_t valuesOfFood) {
  return tableOf(
      [=](std::size_t food) {
        std::string text = food == 0 ? "Code,Food" : fmt::format("{0},Invented food {0}", food);
        for (std::size_t n = 0; n < valuesOfFood; ++n)
          text += food == 0 ? fmt::format(",{}", tagname(n)) : fmt::format(",{:.7f}", amount(food, n));
        return text + "\n";
      },
      foods);
}

}  // namespace tarebowl::transfer
