package ringbook.output.pack;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * Tags fields as forms: what the page maker tagged as a link that holds words and an annotation
 * becomes a span that holds the words and a form that holds the annotation alone (ISO 32000-1,
 * 14.8.4.5, table 340).
 */
final class FormTags {

  private static final COSName PARENT_TREE = COSName.getPDFName("ParentTree");
  private static final COSName NUMBERS = COSName.getPDFName("Nums");

  private final COSDictionary root;

  private FormTags(COSDictionary root) {
    this.root = root;
  }

  /** Tags all fields below the root of a structure tree. */
  static void add(COSDictionary root) {
    new FormTags(root).walk(root);
  }

  private void walk(COSDictionary element) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    if (kids instanceof COSArray array) {
      for (int i = 0; i < array.size(); i++) {
        if (array.getObject(i) instanceof COSDictionary kid) {
          if (isField(kid)) {
            array.set(i, form(element, kid));
          } else {
            walk(kid);
          }
        }
      }
    } else if (kids instanceof COSDictionary kid) {
      if (isField(kid)) {
        element.setName(COSName.S, "Form");
      } else {
        walk(kid);
      }
    }
  }

  private static boolean isField(COSDictionary kid) {
    COSDictionary object = kid.getCOSDictionary(COSName.OBJ);
    return object != null && COSName.TX.equals(object.getCOSName(COSName.FT));
  }

  private COSDictionary form(COSDictionary link, COSDictionary reference) {
    link.setName(COSName.S, "Span");
    link.removeItem(COSName.ALT);
    COSDictionary form = new COSDictionary();
    form.setItem(COSName.TYPE, COSName.getPDFName("StructElem"));
    form.setName(COSName.S, "Form");
    form.setItem(COSName.P, link);
    form.setItem(COSName.PG, link.getItem(COSName.PG));
    form.setItem(COSName.K, reference);
    int number = reference.getCOSDictionary(COSName.OBJ).getInt(COSName.STRUCT_PARENT);
    replace(root.getCOSDictionary(PARENT_TREE), number, form);
    return form;
  }

  /** Lets the annotation of a number find its new parent. */
  private static void replace(COSDictionary tree, int number, COSDictionary parent) {
    COSArray numbers = tree.getCOSArray(NUMBERS);
    for (int i = 0; numbers != null && i + 1 < numbers.size(); i += 2) {
      if (numbers.getInt(i) == number) {
        numbers.set(i + 1, parent);
      }
    }
    COSArray kids = tree.getCOSArray(COSName.KIDS);
    for (int i = 0; kids != null && i < kids.size(); i++) {
      replace((COSDictionary) kids.getObject(i), number, parent);
    }
  }
}
