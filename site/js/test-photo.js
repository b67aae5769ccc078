/* The camera's numbers from one test photograph, read in the page: the settings that a JPEG file carries
   (Exif 2.32, part APP1). Place, owner, make and model are not looked at, and the file goes nowhere.

   RingbookTestPhoto.settings(buffer)   what the file states: {focalLength, equivalent, fNumber, widest,
                                        planeX, planeY, planeUnit, zoom, across, down}, numbers only, each
                                        there if it is stated; null if the file is no JPEG
   RingbookTestPhoto.kit(settings)      {kit, words}: fields for the card (null if they do not suffice), and
                                        what is unknown or doubtful, a sentence each
   RingbookTestPhoto.lay(box, take)     the button on the card */
(function () {
  "use strict";
  var TAGS = {
    0x829d: "fNumber", 0x9205: "apexWidest", 0x920a: "focalLength", 0xa002: "across", 0xa003: "down",
    0xa20e: "planeX", 0xa20f: "planeY", 0xa210: "planeUnit", 0xa404: "zoom", 0xa405: "equivalent"
  };
  var EXIF = 0x8769;
  /* Exif 2.32: by type 1 to 10, bytes of one number. */
  var SIZES = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8];

  function settings(buffer) {
    var data = new DataView(buffer);
    if (data.byteLength < 4 || data.getUint16(0) !== 0xffd8) {
      return null;
    }
    var found = {};
    var at = 2;
    while (at + 4 <= data.byteLength && data.getUint8(at) === 0xff) {
      var mark = data.getUint8(at + 1);
      if (mark === 0xff || mark === 0x01 || (mark >= 0xd0 && mark <= 0xd7)) {
        at += mark === 0xff ? 1 : 2;
        continue;
      }
      if (mark === 0xda || mark === 0xd9) {
        break;
      }
      var length = data.getUint16(at + 2);
      var end = Math.min(at + 2 + length, data.byteLength);
      if (mark === 0xe1 && end - at > 18 && data.getUint32(at + 4) === 0x45786966 && !found.read) {
        found.read = true;
        tagged(new DataView(buffer, at + 10, end - at - 10), found);
      } else if (isFrame(mark) && end - at >= 9) {
        found.rows = data.getUint16(at + 5);
        found.columns = data.getUint16(at + 7);
      }
      at += 2 + length;
    }
    delete found.read;
    return found;
  }

  /* The parts that state width and height of the picture: SOF0 to SOF15, but for DHT, JPG, DAC. */
  function isFrame(mark) {
    return mark >= 0xc0 && mark <= 0xcf && mark !== 0xc4 && mark !== 0xc8 && mark !== 0xcc;
  }

  function tagged(data, found) {
    try {
      var little = data.getUint16(0) === 0x4949;
      if (data.getUint16(2, little) === 42) {
        var inner = directory(data, data.getUint32(4, little), little, found);
        if (inner > 0) {
          directory(data, inner, little, found);
        }
      }
    } catch (cutOff) {
      found.damaged = true;
    }
  }

  /* Notes the numbers of a directory; where the one with the settings begins, if it is named. */
  function directory(data, start, little, found) {
    var inner = 0;
    var count = data.getUint16(start, little);
    for (var i = 0; i < count; i++) {
      var at = start + 2 + 12 * i;
      var tag = data.getUint16(at, little);
      if (tag === EXIF) {
        inner = data.getUint32(at + 8, little);
      } else if (TAGS[tag]) {
        var value = number(data, at, little);
        if (value > 0 && isFinite(value)) {
          found[TAGS[tag]] = value;
        }
      }
    }
    return inner;
  }

  function number(data, at, little) {
    var type = data.getUint16(at + 2, little);
    var size = (SIZES[type] || 0) * data.getUint32(at + 4, little);
    var from = size > 4 ? data.getUint32(at + 8, little) : at + 8;
    switch (type) {
      case 3: return data.getUint16(from, little);
      case 4: return data.getUint32(from, little);
      case 5: return data.getUint32(from, little) / data.getUint32(from + 4, little);
      case 9: return data.getInt32(from, little);
      case 10: return data.getInt32(from, little) / data.getInt32(from + 4, little);
      default: return NaN;
    }
  }

  function round(number, digits) {
    return String(Number(number.toPrecision(digits)));
  }

  /* The same rules, and limits, as the command that reads a test photograph. */
  function kit(found) {
    var words = [];
    var focal = within(found.focalLength, 0.5, 2000, "focal length", words);
    if (focal === 1) {
      focal = undefined;
      words.push("The focal length is stated as exactly 1 mm, as if it were not known.");
    }
    var equivalent = within(found.equivalent, 10, 300, "35 mm equivalent focal length", words);
    var across = found.columns || found.across;
    var down = found.rows || found.down;
    if (!across || !down) {
      return { kit: null, words: ["The file does not state its size in pixels."] };
    }
    var stated = {
      "kit.name": "camera of the test photograph",
      "kit.pixelsAcross": Math.max(across, down) + " px",
      "kit.pixelsDown": Math.min(across, down) + " px"
    };
    if (found.across && found.columns && Math.max(found.across, found.down || 0) !== Math.max(found.columns, found.rows)) {
      words.push("The file was made smaller or cut after it was taken: use one as it came from the camera.");
    }
    if (found.zoom > 1) {
      words.push("Digital zoom was used, so its pixels are enlarged ones: take another one without.");
    }
    var plane = sensor(found, across, down);
    if (equivalent) {
      stated["kit.equivalent"] = round(equivalent, 5) + " mm";
      words.push("The equivalent is in whole millimetres, so frames may be " + round(50 / equivalent, 2) + " % off.");
      if (!focal) {
        words.push("A small phone sensor is assumed: numbers about sharpness may be off.");
      }
    } else if (focal && plane) {
      stated["kit.sensorWidth"] = round(plane[0], 5) + " mm";
      stated["kit.sensorHeight"] = round(plane[1], 5) + " mm";
      words.push("The sensor size is from the focal plane resolution, which may be some percent off.");
    } else {
      return { kit: null, words: words.concat(
        "The photograph does not state how wide the camera sees. Take the numbers from the camera’s manual.") };
    }
    if (focal) {
      stated["kit.focalLength"] = round(focal, 5) + " mm";
    }
    openings(found, stated, words);
    stated["kit.closestFocus"] = (focal >= 10 ? round(focal, 5) : "10") + " cm";
    words.push("The closest focus is assumed, as no photograph tells it: measure it.");
    return { kit: stated, words: words };
  }

  function within(value, low, high, name, words) {
    if (value === undefined) {
      words.push("The photograph does not state the " + name + ".");
    } else if (value < low || value > high) {
      words.push("The " + name + " is stated as " + round(value, 4) + " mm, which cannot be right.");
      return undefined;
    }
    return value;
  }

  function sensor(found, across, down) {
    if (!found.planeX || !found.planeY) {
      return null;
    }
    var unit = found.planeUnit === 3 ? 10 : 25.4;
    var sides = [across / found.planeX * unit, down / found.planeY * unit];
    var wide = Math.max(sides[0], sides[1]);
    var high = Math.min(sides[0], sides[1]);
    return high >= 1 && wide <= 100 ? [wide, high] : null;
  }

  /* The lens wide open is stated as an APEX value: N = 2^(Av / 2). */
  function openings(found, stated, words) {
    var set = found.fNumber <= 64 ? found.fNumber : undefined;
    var open = found.apexWidest ? Math.pow(2, found.apexWidest / 2) : undefined;
    if (!set) {
      stated["kit.widest"] = "f/2";
      words.push("The f-number is not stated; f/2 is assumed: write the smallest of your lens.");
    } else if (open && Math.pow(set / open, 2) > Math.sqrt(2)) {
      stated["kit.widest"] = "f/" + round(open, 2);
      stated["kit.narrowest"] = "f/" + round(set, 4);
      words.push("The f-numbers are those of this photograph: write the smallest and the largest of your lens.");
    } else {
      stated["kit.widest"] = "f/" + round(set, 4);
      stated["kit.narrowest"] = "";
      words.push("The f-number is that of this photograph: if it can be changed, write the smallest and the largest.");
    }
  }

  var part = window.RingbookPage.part;

  function lay(box, take) {
    var place = part(box, "div", "photo");
    var label = part(place, "label", "file", "Take the camera from a test photograph ");
    var input = part(label, "input");
    input.type = "file";
    input.accept = "image/jpeg";
    part(place, "p", "note", "A JPEG as it came from the camera, with the lens and zoom you will use. It is read here and goes nowhere.");
    var said = part(place, "div", "said");
    input.addEventListener("change", function () {
      var file = input.files[0];
      if (!file) {
        return;
      }
      file.arrayBuffer().then(function (buffer) { tell(settings(buffer), said, take); });
    });
  }

  function tell(found, said, take) {
    said.textContent = "";
    if (found === null) {
      part(said, "p", "wrong", "This is no JPEG file. Some phones write HEIC: set the camera to the most compatible format.");
      window.RingbookPage.hear(said.textContent);
      return;
    }
    var made = kit(found);
    part(said, "p", made.kit ? "" : "wrong", made.kit ? "Taken over from the photograph. To know:" : "The photograph does not suffice:");
    var list = part(said, "ul");
    made.words.forEach(function (word) { part(list, "li", "", word); });
    if (made.kit) {
      take(made.kit);
    } else {
      window.RingbookPage.hear(said.firstChild.textContent + " " + made.words.join(" "));
    }
  }

  window.RingbookTestPhoto = { settings: settings, kit: kit, lay: lay };
})();
