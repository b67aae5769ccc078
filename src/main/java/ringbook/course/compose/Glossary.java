package ringbook.course.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The trade words of the course: where they are explained and how they turn up in texts. */
final class Glossary {

  /**
   * A trade word.
   *
   * @param name as the glossary calls it
   * @param page the page at the back that explains it
   * @param anchor the name of its entry on that page
   */
  record Term(String name, String page, String anchor) {

    /** The entry as links inside the course name it. */
    String address() {
      return "course:" + page + "#" + PageIds.full(page, anchor);
    }
  }

  /**
   * A term found in a text.
   *
   * @param term the term
   * @param start where it begins
   * @param end where it ends
   */
  record Hit(Term term, int start, int end) {}

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  /** Every way a term may be written, blanks as one space, to its term. */
  private final Map<String, Term> written = new LinkedHashMap<>();

  /**
   * Terms whose word has everyday senses too, linked by hand only: {@code run (of photographs)}.
   */
  private final Map<String, Term> byHand = new LinkedHashMap<>();

  private final Set<String> pages = new LinkedHashSet<>();
  private Pattern pattern;

  /** Adds an entry; the term that is written the same way already, if there is one. */
  Optional<Term> add(TermList.Entry entry, String page) {
    pages.add(page);
    Term term = new Term(entry.name(), page, "term-" + PageIds.slug(entry.name()));
    pattern = null;
    for (String form : entry.forms()) {
      int sense = form.indexOf(" (");
      String word = sense < 0 ? form : form.substring(0, sense);
      Term other = (sense < 0 ? written : byHand).putIfAbsent(word, term);
      if (other != null) {
        return Optional.of(other);
      }
      (sense < 0 ? written : byHand).putIfAbsent(plural(word), term);
    }
    return Optional.empty();
  }

  /** The term of this name or written this way. */
  Optional<Term> find(String form) {
    String plain = BLANKS.matcher(form).replaceAll(" ");
    Term term = plain.isEmpty() ? null : written.getOrDefault(plain, byHand.get(plain));
    return Optional.ofNullable(term != null ? term : written.get(lowered(plain)));
  }

  /** The term of a link by hand: by its name, or by the words of the link. */
  Optional<Term> linked(String name, String text) {
    String wanted = name.isEmpty() ? text : name;
    return find(wanted).or(() -> find(wanted.replace('-', ' ')));
  }

  /** The term whose entry has that name. */
  Optional<Term> named(String name) {
    return terms().stream().filter(term -> term.name().equals(name)).findFirst();
  }

  /** All terms in order. */
  List<Term> terms() {
    Set<Term> terms = new LinkedHashSet<>(written.values());
    terms.addAll(byHand.values());
    return List.copyOf(terms);
  }

  /** All ways terms are written, for suggestions. */
  Set<String> forms() {
    Set<String> forms = new LinkedHashSet<>(written.keySet());
    forms.addAll(byHand.keySet());
    return forms;
  }

  /** Whether the page holds terms. */
  boolean isOn(String page) {
    return pages.contains(page);
  }

  /** The terms in a text in order; the longest one wins where several begin. */
  List<Hit> in(CharSequence text) {
    List<Hit> hits = new ArrayList<>();
    if (written.isEmpty()) {
      return hits;
    }
    Matcher matcher = pattern().matcher(text);
    while (matcher.find()) {
      find(matcher.group()).ifPresent(t -> hits.add(new Hit(t, matcher.start(), matcher.end())));
    }
    return hits;
  }

  private Pattern pattern() {
    if (pattern == null) {
      List<String> forms = new ArrayList<>(written.keySet());
      forms.sort(Comparator.comparingInt(String::length).reversed());
      StringBuilder any = new StringBuilder();
      for (String form : forms) {
        any.append(any.isEmpty() ? "" : "|").append(expression(form));
      }
      pattern = Pattern.compile("(?<![\\p{L}\\p{N}-])(?:" + any + ")(?![\\p{L}\\p{N}]|-\\p{L})");
    }
    return pattern;
  }

  /** A form with small letters may begin a sentence; one with capitals is written just so. */
  private static String expression(String form) {
    char first = form.charAt(0);
    boolean small = form.equals(form.toLowerCase(Locale.ROOT));
    String head =
        small ? "[" + Character.toUpperCase(first) + first + "]" : Pattern.quote("" + first);
    String[] words = BLANKS.split(form.substring(1), -1);
    StringBuilder out = new StringBuilder(head);
    for (int i = 0; i < words.length; i++) {
      out.append(i == 0 ? "" : "\\s+").append(Pattern.quote(words[i]));
    }
    return out.toString();
  }

  private static String lowered(String plain) {
    return plain.isEmpty() ? plain : Character.toLowerCase(plain.charAt(0)) + plain.substring(1);
  }

  /** The regular plural of the last word. */
  static String plural(String form) {
    String end = form.length() < 2 ? form : form.substring(form.length() - 2);
    if (end.endsWith("y") && "aeiou".indexOf(end.charAt(0)) < 0) {
      return form.substring(0, form.length() - 1) + "ies";
    }
    boolean hissing =
        end.endsWith("s") || end.endsWith("x") || end.equals("ch") || end.equals("sh");
    return form + (hissing ? "es" : "s");
  }
}
