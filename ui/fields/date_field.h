#pragma once

#include <QDateEdit>
#include <string>

namespace coutil {

// A day, with a calendar to pick from; ISO 8601 outside, the maker's own way of writing inside.
class DateField : public QDateEdit {
    Q_OBJECT

  public:
    explicit DateField(QWidget* parent = nullptr);

    void setIsoDate(const std::string& date);  // does not signal; what is no date leaves it alone
    [[nodiscard]] std::string isoDate() const;

  signals:
    void edited(const std::string& isoDate);  // by the maker

  protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace coutil
