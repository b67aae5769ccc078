package ringbook.course.values;

import freemarker.template.TemplateScalarModel;

/** A value that is ready to be printed. */
record ShownModel(Value value, String text) implements TemplateScalarModel {

  @Override
  public String getAsString() {
    return text;
  }
}
