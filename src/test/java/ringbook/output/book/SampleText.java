package ringbook.output.book;

import java.util.Locale;

/** Running text of the sample course, as the Markdown reader would hand it over. */
final class SampleText {

  private static final String STANDOFF =
      "<data class=\"quantity\" data-key=\"distance.standoff\" value=\"0.405\">40.5 cm</data>";

  static final String DISTANCE_OPENING =
      fill(
          """
      <p>Hold the camera too far away and the object is a small thing in the middle of much
      background. Hold it too near and a part is cut off. Between the two there is one distance that
      uses the whole frame: the <em>standoff</em>, measured from the lens to the near face of the
      object. For this group it is %1.</p>
      <p>Two things ask for it. The object’s width must fit in one side of the frame, and its height
      in the other. Each asks for a distance of its own; the larger of the two wins, because at the
      smaller one something is cut off. A little air round the object is wanted too, for the hand is
      never quite steady and a few millimetres of table help the program to find its way.</p>
      <h2 id="right-distance-fits">What has to fit</h2>
      <p>Measure the object with a tape at its widest and at its tallest place. Write both numbers
      down with their unit. Then look at which way round you hold the camera: a tall pot asks for the
      long side of the frame to stand upright. This changes the answer by a third, and it is the most
      common slip of the first evening.</p>
      <ul>
      <li>Measure to the outermost point, also if it is only a handle.</li>
      <li>Measure from the table top, not from the first point you can see.</li>
      <li>Half a centimetre is good enough.</li>
      </ul>
      <p>When the standoff is known, the picture of the frame is known as well. Look at the figure and
      find where you would stand. Read <a href="course:sharp-throughout">the next lesson</a> for what
      the lens must be set to, and <a href="course:one-ring#one-ring-turn">how far to turn</a> for what
      comes after that.</p>
      """,
          STANDOFF);

  static final String DISTANCE_WORKING =
      fill(
          """
      <h3>Worked out for this group</h3>
      <div class="working" id="w-standoff" data-key="distance.acrossNeeded">
      <p>The distance the height asks for comes from similar triangles: what the lens sees grows with
      the distance.</p>
      <p class="formula">%1</p>
      <p class="result">%2</p>
      <ul class="inputs"><li>f <a href="course:quantities#kit.focalLength">focal length</a>: 6.4 mm</li>
      <li>h <a href="course:quantities#subject.height">height</a>: 36 cm</li></ul>
      </div>
      <table><caption>What each side asks for</caption>
      <thead><tr><th scope="col">side</th><th scope="col">object</th><th scope="col"
      class="al-right">standoff</th></tr></thead>
      <tbody><tr><td>long</td><td>36 cm</td><td class="al-right">40.5 cm</td></tr>
      <tr><td>short</td><td>30 cm</td><td class="al-right">38.2 cm</td></tr></tbody></table>
      """,
          formula("d equals f times h over s", 11), STANDOFF);

  static final String DISTANCE_CLOSING =
      fill(
          """
      <div class="caution"><h3>Mind your back and the cable</h3><p>Standing at %1 from a low table
      bends the back. Raise the table or sit. Lay cables along the wall, never across the ring, and
      let the keeper of the object move it.</p></div>
      <h2>When the room is too small</h2>
      <p>Sometimes the wall is nearer than the standoff. Then turn the object instead of walking round
      it, or take each view in two overlapping photographs, one above the other. Both are better than
      a cut-off rim. What is never better is to step back through a doorway and hope: the ring then has
      a dent, and the photographs beside the dent no longer see the same detail.</p>
      <p>Keep the distance the same all the way round. A piece of string from the middle of the table
      to the strap of the camera does it better than any marks on the floor.</p>
      <div class="try"><h3>Try it</h3><p>Put your thumb at arm’s length before one eye and step towards
      a chair until the chair fills the frame of your other hand. Measure. You have just found a
      standoff, and it took ten seconds.</p></div>
      <div class="slips"><h3>Slips</h3><ul><li>Measured to the middle instead of to the near face: the
      photos come out 15 cm too near.</li><li>Used the equivalent focal length: the answer is four times
      too large.</li></ul></div>
      <div class="summary"><h3>On a card</h3><ul><li>Standoff %1 to the near face.</li><li>Hold the
      camera upright.</li><li>Keep the string tight.</li></ul></div>
      """,
          STANDOFF);

  static final String SHARP_OPENING =
      fill(
          """
      <h2>Why near and far are not sharp together</h2>
      <p>A lens is sharp at one distance only. Before and behind it every point of the object becomes a
      small disc. While that disc is smaller than a pixel or two nobody can tell; when it grows, the
      fine speckles of the clay run into each other, and those speckles are what the program matches.
      Closing the aperture makes the discs smaller. Closing it too far makes everything soft at once,
      for light bends at the edge of a small hole.</p>
      <p>So there is a window of settings: wide enough open to avoid the bending, closed enough for the
      depth. Inside the window everything that matters is sharp at a standoff of %1. A phone offers
      no choice of aperture, and then only the distance helps.</p>
      <p>Focus a little behind the near face, about a third of the way in. This is no magic number; it
      follows from the two discs, near and far, having to be of the same size. Lock the focus there and
      do not let the camera find it anew in every photograph.</p>
      """,
          STANDOFF);

  static final String SHARP_CLOSING =
      """
      <h2>Setting it without looking it up</h2>
      <ol><li>Put the camera at the standoff.</li><li>Touch the near rim on the screen and hold until the
      lock shows.</li><li>Take one photograph and look at the far rim at full size.</li></ol>
      <p>If the far rim is soft, stand back a hand’s breadth and look again. The detail becomes smaller,
      so look at <a href="course:right-distance#right-distance-fits">what has to fit</a> once more.</p>
      <dl><dt>Blur spot</dt><dd>The disc a point becomes when it is out of focus.</dd><dt>Window</dt><dd>The
      f-numbers between too open and too closed: 5.6 ≤ N ≤ 9, about ½ a stop → 2 settings.</dd></dl>
      """;

  static final String RING_OPENING =
      """
      <h2 id="one-ring-turn">How far to turn</h2>
      <p>Two photographs side by side must show the same places of the clay from not too different
      directions. Turn little, and you take many photographs that say the same; turn far, and the
      program finds no speckle again. For this group a turn of 15° gives
      <data class="quantity" data-key="ring.photos" value="24">24 photos</data>.</p>
      <p>Count aloud. A ring that stops two photographs early has a gap where nobody looks for one: at
      the place where you started. Take the first photograph once more at the end; it costs a second
      and closes the ring. Lay a strip of paper round the foot of the pot with a tick at each turn if
      you like to see where you are, and walk from tick to tick.</p>
      """;

  static final String RING_CLOSING =
      """
      <h2>The desk in the way</h2>
      <p>The workbench cuts off part of the ring. Walk as far as it goes, then turn the pot on its table
      so that the missed part comes to the front, and take the missing photographs from where you can
      stand. Mark the table first: a cross of tape under the pot shows how far it was turned.</p>
      <p>Light must stay where it is while the pot turns. That is a small harm with soft light from a
      window, and a great one with a lamp. With a lamp, move the workbench. Ask for help with it; two
      people lift, one person looks after the pot.</p>
      <table><caption>Turn and count</caption><thead><tr><th scope="col">turn</th><th
      scope="col">photos</th><th scope="col">seen by both</th></tr></thead><tbody>
      <tr><td>10°</td><td>36</td><td>89 %</td></tr><tr><td>15°</td><td>24</td><td>83 %</td></tr>
      <tr><td>30°</td><td>12</td><td>67 %</td></tr><tr><td>45°</td><td>8</td><td>50 %</td></tr>
      <tr><td>72°</td><td>5</td><td>20 %</td></tr></tbody></table>
      """;

  static final String SOLUTION =
      fill(
          """
      <p>The height asks for the larger distance, so it decides.</p><p>%1</p><p>Measured to the middle of
      the object it would be 10 cm more; that is the usual slip.</p>
      """,
          formula("d equals f times h over s equals 50.3 centimetres", 14));

  /** Key, name and value of the appendix' rows. */
  static final String[][] QUANTITIES = {
    {"kit.focalLength", "focal length", "6.4 mm"},
    {"kit.pixelPitch", "pixel pitch", "0.0012 mm"},
    {"subject.height", "height", "36 cm"},
    {"distance.acrossNeeded", "distance the width asks for", "38.2 cm"},
    {"distance.standoff", "standoff", "40.5 cm"},
    {"sharp.hyperfocal", "hyperfocal distance", "9.5 m"},
    {"sharp.window", "window of f-numbers", "no: the lens cannot be set"},
    {"ring.photos", "photos of a ring", "24"},
    {"ring.realStep", "real turn", "15°"},
    {"pair.shared", "seen by both", "83 %"}
  };

  private SampleText() {}

  /** A formula as an outline drawing that sits on the line, so many letters wide. */
  static String formula(String said, double wideEm) {
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"math\" role=\"img\" aria-label=\"%s\""
            + " viewBox=\"0 0 %.0f 200\" style=\"width:%.2fem;height:2em;vertical-align:-0.7em\">"
            + "<path d=\"M0 130H%.0fV110H0Z M20 60h60v20h-60Z M20 160h60v20h-60Z\"/></svg>",
        said,
        wideEm * 100,
        wideEm,
        wideEm * 100);
  }

  /** Puts the parts in place of the marks %1 to %9; without any locale. */
  private static String fill(String text, String... parts) {
    String filled = text;
    for (int i = 0; i < parts.length; i++) {
      filled = filled.replace("%" + (i + 1), parts[i]);
    }
    return filled;
  }
}
