package thalweg.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Hash;
import thalweg.logbook.Photo;

/** Photos within the body of an inspection. */
final class PhotoBody {

    static final String KEY = "photos";

    private PhotoBody() {}

    static Json.Fields with(Json.Fields fields, List<Photo> photos) {
        return photos.isEmpty()
                ? fields
                : fields.with(
                        KEY,
                        new Json.Items(photos.stream().map(PhotoBody::write).toList()));
    }

    private static Json write(Photo photo) {
        return Json.fields()
                .put("file", photo.file())
                .put("sha256", photo.hash().hex())
                .put("caption", photo.caption())
                .done();
    }

    static List<Photo> read(FieldReader in) {
        List<Photo> photos = new ArrayList<>();
        List<FieldReader> inner = in.objects(KEY);
        if (inner.size() > Limits.LIST) {
            in.refuse(KEY, Sentence.of("are {0}; at most {1} go with one inspection.", inner.size(), Limits.LIST));
            return List.of();
        }
        inner.forEach(one -> photo(one).ifPresent(photos::add));
        return photos;
    }

    private static Optional<Photo> photo(FieldReader in) {
        String file = in.text("file", Limits.FILE);
        Optional<Hash> hash = Hash.parse(in.text("sha256", 64));
        String caption = in.textOrEmpty("caption", Limits.LINE);
        in.refuseUnasked();
        if (in.sound() && hash.isEmpty()) {
            in.refuse("sha256", Sentence.of("is no SHA-256; it should be 64 hexadecimal digits."));
        }
        if (in.sound() && file.contains("/")) {
            in.refuse("file", Sentence.of("is \"{0}\"; it should be the name of the file without folders.", file));
        }
        return in.sound() ? Optional.of(new Photo(file, hash.orElseThrow(), caption)) : Optional.empty();
    }
}
