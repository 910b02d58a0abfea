package drylap.progress;

import static drylap.persistence.jooq.Tables.PHOTO;
import static org.jooq.impl.DSL.exists;
import static org.jooq.impl.DSL.selectOne;

import drylap.platform.FileUse;
import org.jooq.Condition;
import org.jooq.Field;
import org.springframework.stereotype.Service;

/** The files that photos refer to, and those of their thumbnails. */
@Service
final class PhotoFiles implements FileUse {
    @Override
    public Condition uses(Field<String> digest) {
        return exists(selectOne().from(PHOTO).where(PHOTO.SHA256.eq(digest)))
                .or(exists(selectOne().from(PHOTO).where(PHOTO.THUMBNAIL_SHA256.eq(digest))));
    }
}
