#pragma once

#include <clocale>

/// Reading and writing of files, the same whatever language, user and folder.
namespace lobewright::files {

/// While this object lives, the C library of this thread reads and writes numbers with a point, as
/// files do, whatever language the program shows. For libraries that convert numbers themselves;
/// our own code uses std::from_chars and fmt, which do not care.
class ClassicLocale {
  public:
    ClassicLocale();
    ~ClassicLocale();
    ClassicLocale(const ClassicLocale&) = delete;
    ClassicLocale& operator=(const ClassicLocale&) = delete;

  private:
    ::locale_t before_;
};

} // namespace lobewright::files
