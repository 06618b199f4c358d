// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_settings.h"

#include "ui/foods/column_words.h"
#include "ui/foods/stated_text.h"
#include "ui/shared/format.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/wrapping_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr int kGap = 7;

constexpr std::array kBases{quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Energy};
constexpr std::array kDelimiters{',', ';', '\t', '|', '^'};
constexpr int kLastHeaderLine = 1000;

QLabel* labelFor(const QString& words, QWidget* field) {
  auto* label = new QLabel(words);
  label->setProperty("soft", true);
  label->setBuddy(field);
  if (field->accessibleName().isEmpty()) field->setAccessibleName(words);
  return label;
}

/// What stays on one line where the others wrap.
QWidget* together(std::initializer_list<QWidget*> parts) {
  auto* whole = new QWidget;
  auto* layout = new QHBoxLayout(whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  for (QWidget* part : parts) layout->addWidget(part);
  return whole;
}

}  // namespace

ImportSettings::ImportSettings(ImportDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      layout_(new SegmentedSwitch(tr("Layout"), {tr("a row a food"), tr("a row a value")})),
      mark_(new SegmentedSwitch(tr("Decimal mark"), {tr("12.5"), tr("12,5")})),
      basis_(new QComboBox),
      per_(new QLineEdit),
      zero_(new QCheckBox(tr("0 means: not measured"))),
      source_(new QLineEdit),
      delimiter_(new QComboBox),
      encoding_(new QComboBox),
      header_(new QSpinBox),
      units_(new QCheckBox(tr("units on the line after"))) {
  build();
  wire();
  show();
}

void ImportSettings::build() {
  for (const quantity::Basis basis : kBases) basis_->addItem(basisWords(basis));
  delimiter_->addItems({tr("comma"), tr("semicolon"), tr("tab"), tr("bar |"), tr("caret ^")});
  encoding_->addItems({tr("as its bytes say"), QStringLiteral("UTF-8"), QStringLiteral("UTF-16 LE"),
                       QStringLiteral("UTF-16 BE"), QStringLiteral("Windows-1252"),
                       QStringLiteral("Latin-1")});
  header_->setRange(0, kLastHeaderLine);
  header_->setSpecialValueText(tr("none"));
  header_->setKeyboardTracking(false);
  per_->setMaximumWidth(fontMetrics().averageCharWidth() * 9);
  source_->setToolTip(tr("By this name and a food's code the food is found again when the table comes anew"));
  per_->setToolTip(tr("Grams (for energy: kcal) that a value is per, where the column does not say"));
  layout_->setToolTips({tr("One line holds all values of a food"), tr("One line holds one value of a food")});
  basis_->setAccessibleName(tr("Basis where no column says it"));
  auto* first = new WrappingRow;
  auto* second = new WrappingRow;
  for (WrappingRow* row : {first, second}) row->setSpacing(kGap);
  QWidget* source = together({labelFor(tr("Source"), source_), source_});
  source->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  QWidget* per = together({labelFor(tr("Values per"), per_), per_, labelFor(tr("g"), basis_), basis_});
  per->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
  for (QWidget* part : std::initializer_list<QWidget*>{source, layout_, per, zero_}) first->addWidget(part);
  for (QWidget* part : {together({labelFor(tr("Numbers as"), mark_), mark_}),
                        together({labelFor(tr("Header on line"), header_), header_, units_}),
                        together({labelFor(tr("Cells parted by"), delimiter_), delimiter_}),
                        together({labelFor(tr("Letters as"), encoding_), encoding_})})
    second->addWidget(part);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addLayout(first);
  layout->addLayout(second);
}

template <class Change>
void ImportSettings::change(Change edit) {
  if (showing_) return;
  exchange::TableMapping mapping = desk_.mapping();
  edit(mapping);
  desk_.setMapping(std::move(mapping));
}

void ImportSettings::wire() {
  connect(&desk_, &ImportDesk::mappingChanged, this, &ImportSettings::show);
  connect(layout_, &SegmentedSwitch::chosen, this,
          [this](int index) { change([=](auto& mapping) { mapping.isLong = index == 1; }); });
  connect(mark_, &SegmentedSwitch::chosen, this, [this](int index) {
    change([=](auto& mapping) {
      mapping.decimalMark = index == 0 ? exchange::DecimalMark::Point : exchange::DecimalMark::Comma;
    });
  });
  connect(basis_, &QComboBox::activated, this, [this](int index) {
    change([=](auto& mapping) { mapping.basis = kBases.at(static_cast<std::size_t>(index)); });
  });
  connect(per_, &QLineEdit::editingFinished, this, &ImportSettings::changePer);
  connect(zero_, &QCheckBox::clicked, this,
          [this](bool on) { change([=](auto& mapping) { mapping.zeroIsUnknown = on; }); });
  connect(source_, &QLineEdit::editingFinished, this, [this] {
    const std::string source = source_->text().trimmed().toStdString();
    if (!source.empty()) change([&](auto& mapping) { mapping.source = source; });
  });
  connect(units_, &QCheckBox::clicked, this,
          [this](bool on) { change([=](auto& mapping) { mapping.unitsLine = on; }); });
  connect(delimiter_, &QComboBox::activated, this, &ImportSettings::readAgain);
  connect(encoding_, &QComboBox::activated, this, &ImportSettings::readAgain);
  connect(header_, &QSpinBox::valueChanged, this, &ImportSettings::readAgain);
}

void ImportSettings::changePer() {
  const auto per = readNumber(per_->text());
  if (!per || *per <= 0.0) {
    emit notUnderstood(tr("“%1” is nothing that values can be per: a number above 0.").arg(per_->text()));
    return show();
  }
  change([&](auto& mapping) { mapping.per = *per; });
}

void ImportSettings::readAgain() {
  if (showing_) return;
  exchange::TextTableForm form = desk_.mapping().form;
  if (delimiter_->currentIndex() >= 0)
    form.delimiter = kDelimiters.at(static_cast<std::size_t>(delimiter_->currentIndex()));
  form.encoding = encoding_->currentIndex() > 0
                      ? std::optional(static_cast<exchange::Encoding>(encoding_->currentIndex() - 1))
                      : std::nullopt;
  const bool sameForm = form == desk_.mapping().form;
  const auto line = static_cast<std::size_t>(header_->value());
  // Where only the cells come apart otherwise, the header may be found elsewhere.
  desk_.readAs({.form = form, .headerLine = sameForm ? std::optional(line) : std::nullopt});
}

void ImportSettings::show() {
  showing_ = true;
  const exchange::TableMapping& mapping = desk_.mapping();
  layout_->setCurrent(mapping.isLong ? 1 : 0);
  mark_->setCurrent(!mapping.decimalMark ? -1 : mapping.decimalMark == exchange::DecimalMark::Point ? 0 : 1);
  for (std::size_t i = 0; i < kBases.size(); ++i)
    if (kBases.at(i) == mapping.basis) basis_->setCurrentIndex(static_cast<int>(i));
  per_->setText(stated(mapping.per));
  zero_->setChecked(mapping.zeroIsUnknown);
  source_->setText(QString::fromStdString(mapping.source));
  for (std::size_t i = 0; i < kDelimiters.size(); ++i)
    if (kDelimiters.at(i) == mapping.form.delimiter) delimiter_->setCurrentIndex(static_cast<int>(i));
  encoding_->setCurrentIndex(mapping.form.encoding ? 1 + static_cast<int>(*mapping.form.encoding) : 0);
  header_->setValue(static_cast<int>(mapping.headerLine));
  units_->setChecked(mapping.unitsLine);
  const bool text = desk_.file().extension() != ".xlsx";
  delimiter_->setEnabled(text);
  encoding_->setEnabled(text);
  showing_ = false;
}

}  // namespace tarebowl::ui
