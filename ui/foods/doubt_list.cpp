// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/doubt_list.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/theme.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kMargin = 8;
constexpr int kMarkSide = 11;
constexpr int kSentenceLines = 2;

/// The food's name, and below it the doubt on two lines.
class DoubtDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Theme& theme = currentTheme();
    paintRowGround(*painter, option, theme);
    const QRect box = option.rect.adjusted(kMargin, kMargin / 2, -kMargin, -kMargin / 2);
    const int line = option.fontMetrics.height();
    paintMark(*painter, QRectF(box.left(), box.top() + (line - kMarkSide) / 2.0, kMarkSide, kMarkSide),
              static_cast<Mark>(index.data(DoubtListModel::MarkRole).toInt()), theme);
    QRect text = box.adjusted(kMarkSide + kMargin, 0, 0, 0);
    QFont bold = option.font;
    bold.setBold(true);
    painter->setFont(bold);
    painter->setPen(theme.ink);
    painter->drawText(QRect(text.left(), text.top(), text.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(bold).elidedText(index.data().toString(), Qt::ElideRight, text.width()));
    text.setTop(text.top() + line);
    painter->setFont(option.font);
    painter->setPen(theme.soft);
    painter->drawText(text, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                      index.data(DoubtListModel::SentenceRole).toString());
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& /*index*/) const override {
    return {0, (1 + kSentenceLines) * option.fontMetrics.height() + kMargin};
  }
};

}  // namespace

DoubtListModel::DoubtListModel(const CollectionDoubts& doubts, const FoodDesk& foods, QObject* parent)
    : QAbstractListModel(parent), doubts_(doubts), foods_(foods) {
  connect(&doubts_, &CollectionDoubts::changed, this, &DoubtListModel::take);
}

void DoubtListModel::look(const QString& words) {
  words_ = words.trimmed();
  take();
}

void DoubtListModel::take() {
  beginResetModel();
  shown_.clear();
  if (doubts_.doubts())
    for (const Doubt& doubt : *doubts_.doubts())
      if (words_.isEmpty() || nameText(doubt).contains(words_, Qt::CaseInsensitive) ||
          sentenceText(doubt).contains(words_, Qt::CaseInsensitive))
        shown_.push_back(doubt);
  endResetModel();
}

QString DoubtListModel::nameText(const Doubt& doubt) const {
  const food::FoodLine* line = foods_.lineOf(doubt.food);
  if (line == nullptr) return {};
  const QString form = QString::fromStdString(line->form);
  return form.isEmpty() ? nameOf(*line) : QStringLiteral("%1, %2").arg(nameOf(*line), form);
}

QString DoubtListModel::sentenceText(const Doubt& doubt) const {
  const CheckSentence sentence = doubts_.sentenceOf(doubt);
  return QStringLiteral("%1 %2").arg(sentence.what, sentence.advice).trimmed();
}

int DoubtListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant DoubtListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Doubt& doubt = shown_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return nameText(doubt);
    case SentenceRole:
    case Qt::ToolTipRole:
      return sentenceText(doubt);
    case Qt::AccessibleTextRole:
      return QStringLiteral("%1: %2").arg(nameText(doubt), sentenceText(doubt));
    case MarkRole:
      return static_cast<int>(doubts_.sentenceOf(doubt).mark);
    case FoodRole:
      return static_cast<qint64>(doubt.food);
    default:
      return {};
  }
}

DoubtList::DoubtList(CollectionDoubts& doubts, FoodDesk& foods, QWidget* parent)
    : QWidget(parent),
      doubts_(doubts),
      foods_(foods),
      model_(new DoubtListModel(doubts, foods, this)),
      field_(new QLineEdit),
      list_(new QListView),
      count_(new QLabel) {
  setObjectName(QStringLiteral("listPane"));
  setAttribute(Qt::WA_StyledBackground);
  build();
  connect(field_, &QLineEdit::textChanged, model_, &DoubtListModel::look);
  connect(model_, &QAbstractItemModel::modelReset, this, &DoubtList::showCount);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& now) {
            if (now.isValid()) emit chosen(now.data(DoubtListModel::FoodRole).toLongLong());
          });
  showCount();
}

void DoubtList::build() {
  field_->setPlaceholderText(tr("Find among the doubts…"));
  field_->setAccessibleName(tr("Find a doubt by the food's name or by what is doubted"));
  field_->setClearButtonEnabled(true);
  auto* back = new QPushButton(tr("All foods"));
  back->setToolTip(tr("Back to the list of foods"));
  connect(back, &QPushButton::clicked, this, &DoubtList::done);
  list_->setModel(model_);
  list_->setItemDelegate(new DoubtDelegate(list_));
  list_->setAccessibleName(tr("What a careful analyst would doubt"));
  list_->setUniformItemSizes(true);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  count_->setProperty("soft", true);
  count_->setFont(smaller(font()));
  count_->setWordWrap(true);
  count_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  auto* top = new QHBoxLayout;
  top->setSpacing(7);
  top->addWidget(field_, 1);
  top->addWidget(back);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(14, 12, 14, 6);
  layout->setSpacing(8);
  layout->addLayout(top);
  layout->addWidget(list_, 1);
  layout->addWidget(count_);
}

void DoubtList::showCount() {
  list_->setVisible(model_->rowCount() > 0);  // what is said of none stands at the top
  if (!doubts_.doubts()) {
    const bool failed = !doubts_.isWorking() && !doubts_.complaint().isEmpty();
    count_->setText(failed ? tr("The foods could not be looked through: %1").arg(doubts_.complaint())
                           : tr("looking through the foods…"));
    return;
  }
  const QLocale locale;
  const auto all = static_cast<int>(doubts_.doubts()->size());
  QString text =
      all == 0   ? tr("Nothing in these foods would make a careful analyst doubt.")
      : all == 1 ? tr("1 doubt about %1 foods").arg(locale.toString(static_cast<int>(foods_.foods().size())))
                 : tr("%1 doubts about %2 foods")
                       .arg(locale.toString(all), locale.toString(static_cast<int>(foods_.foods().size())));
  if (model_->rowCount() < all) text = tr("%1 of %2").arg(locale.toString(model_->rowCount()), text);
  if (doubts_.isWorking()) text += tr(" · looking again…");
  count_->setText(text);
}

}  // namespace tarebowl::ui
